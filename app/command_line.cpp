#include "app/command_line.h"

#include <filesystem>
#include <fstream>
#include <iostream>
#include <iterator>
#include <string>
#include <string_view>
#include <vector>

#include "core/outing/archive.h"
#include "core/outing/field_card.h"
#include "core/outing/report.h"

namespace gs {
namespace {

constexpr std::string_view kUsage =
    "groundsheet                                          opens the window\n"
    "groundsheet --evaluate FILE [--set KEY=VALUE]...     every reading of an outing file\n"
    "groundsheet --card FILE [--set KEY=VALUE]...         everything needed on paper, as text\n"
    "groundsheet --check KEY [--set INPUT=VALUE]...       one small question beside the plan\n"
    "groundsheet --levers | --readings | --checks         the tables\n";

int fail(const std::string& why) {
  std::cerr << why << '\n';
  return 1;
}

struct Setting {
  std::string key, value;
};

/// KEY=VALUE pairs behind --set from argument `at` on; a complaint where they are not.
std::string settings_from(int argc, char** argv, int at, std::vector<Setting>& settings) {
  for (; at < argc; at += 2) {
    const std::string_view option = argv[at];
    if (option != "--set") return std::string(option) + ": not known here; only --set KEY=VALUE may follow";
    if (at + 1 >= argc) return "--set: needs KEY=VALUE";
    const std::string_view pair = argv[at + 1];
    const std::size_t equals = pair.find('=');
    if (equals == std::string_view::npos) return std::string(pair) + ": needs KEY=VALUE";
    settings.push_back({std::string(pair.substr(0, equals)), std::string(pair.substr(equals + 1))});
  }
  return {};
}

int evaluate_file(const char* path, const std::vector<Setting>& settings, bool as_card) {
  if (std::filesystem::is_directory(path)) return fail(std::string(path) + ": is a folder, not an outing file");
  std::ifstream file(path, std::ios::binary);
  if (!file) return fail(std::string(path) + ": cannot be read");
  constexpr std::size_t kMostRead = 64 * kMostFileBytes;  // enough to tell how far too large a file is
  std::string text;
  for (char block[1 << 16]; text.size() < kMostRead && (file.read(block, sizeof block), file.gcount() > 0);)
    text.append(block, std::size_t(file.gcount()));
  LoadedOuting loaded = read_outing(text);
  if (!loaded.refusal.empty()) return fail(std::string(path) + ": " + loaded.refusal);
  for (const std::string& note : loaded.notes) std::cerr << path << ": " << note << '\n';
  for (const Setting& setting : settings) {
    if (setting.key == "outing.date") {
      if (!sky::read_date(setting.value)) return fail("outing.date: a day such as 2026-06-13 is wanted");
      loaded.outing.date = setting.value;
      continue;
    }
    const L id = find_lever(setting.key);
    if (!is_lever(id)) return fail(setting.key + ": no lever has this key; --levers lists them");
    ReadValue read = read_value(lever(id), setting.value);
    if (!read.trouble.empty()) return fail(read.trouble);
    loaded.outing = with(std::move(loaded.outing), id, std::move(read.value));
  }
  const Plan plan = resolve(loaded.outing);
  const Outlook outlook = evaluate(plan);
  std::cout << (as_card ? card_text(field_card(loaded.outing, plan, outlook, {})) : outlook_json(plan, outlook));
  return 0;
}

int work_out_check(const char* key, const std::vector<Setting>& settings) {
  const Check* check = find_check(key);
  if (!check) return fail(std::string(key) + ": no check has this key; --checks lists them");
  std::vector<Value> given(check->inputs.size());
  for (const Setting& setting : settings) {
    std::size_t at = 0;
    while (at < check->inputs.size() && check->inputs[at].row.key != setting.key) ++at;
    if (at == check->inputs.size())
      return fail(setting.key + ": " + key + " has no such input; --checks lists them");
    ReadValue read = read_value(check->inputs[at].row, setting.value);
    if (!read.trouble.empty()) return fail(read.trouble);
    given[at] = std::move(read.value);
  }
  const CheckValues values = resolve_check(*check, given, resolve(Outing{}.set));
  std::cout << check_json(*check, values, work_out(*check, values));
  return 0;
}

}  // namespace

bool command_line(int argc, char** argv, int& status) {
  if (argc < 2) return false;
  const std::string_view verb = argv[1];
  status = 0;
  std::vector<Setting> settings;
  if (verb == "--evaluate" || verb == "--card" || verb == "--check") {
    if (argc < 3) {
      status = fail(std::string(verb) + (verb == "--check" ? ": needs a check's key" : ": needs a file"));
      return true;
    }
    if (std::string why = settings_from(argc, argv, 3, settings); !why.empty()) {
      status = fail(why);
      return true;
    }
    status =
        verb == "--check" ? work_out_check(argv[2], settings) : evaluate_file(argv[2], settings, verb == "--card");
  } else if (argc == 2 && verb == "--levers") {
    std::cout << levers_json();
  } else if (argc == 2 && verb == "--readings") {
    std::cout << readings_json();
  } else if (argc == 2 && verb == "--checks") {
    std::cout << checks_json();
  } else if (argc == 2 && verb == "--help") {
    std::cout << kUsage;
  } else {
    status = fail(std::string(verb) + ": not known; --help lists what is");
  }
  return true;
}

}  // namespace gs
