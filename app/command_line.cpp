#include "app/command_line.h"

#include <cmath>
#include <filesystem>
#include <fstream>
#include <iostream>
#include <iterator>
#include <string>
#include <string_view>
#include <vector>

#include "core/outing/archive.h"
#include "core/outing/field_card.h"
#include "core/outing/past.h"
#include "core/outing/report.h"
#include "core/pace/utc.h"

namespace gs {
namespace {

constexpr std::string_view kUsage =
    "groundsheet                                          opens the window\n"
    "groundsheet --evaluate FILE [OPTION]...              every reading of an outing file\n"
    "groundsheet --card FILE [OPTION]...                  everything needed on paper, as text\n"
    "groundsheet --check KEY [--set INPUT=VALUE]...       one small question beside the plan\n"
    "groundsheet --levers | --readings | --checks         the tables\n"
    "OPTION of an outing: --set KEY=VALUE\n"
    "                     --now TIME       as if it were then: 18:30 of its day, or 2026-06-13T22:30:00Z\n"
    "                     --history FILE   the usual pace from the outings of this file\n";

int fail(const std::string& why) {
  std::cerr << why << '\n';
  return 1;
}

struct Setting {
  std::string key, value;
};

struct Options {
  std::vector<Setting> settings;
  std::string now, history;
};

/// KEY=VALUE pairs behind --set, and what stands behind --now and --history, from argument `at` on; a complaint
/// where they are not.
std::string options_from(int argc, char** argv, int at, bool of_outing, Options& options) {
  for (; at < argc; at += 2) {
    const std::string_view option = argv[at];
    const bool is_now = option == "--now", is_history = option == "--history";
    if (option != "--set" && !(of_outing && (is_now || is_history)))
      return std::string(option) + ": not known here; only --set KEY=VALUE" +
             (of_outing ? ", --now TIME and --history FILE" : "") + " may follow";
    if (at + 1 >= argc)
      return std::string(option) + (is_now       ? ": needs a time"
                                    : is_history ? ": needs a file"
                                                 : ": needs KEY=VALUE");
    const std::string_view given = argv[at + 1];
    if (is_now || is_history) {
      (is_now ? options.now : options.history) = given;
      continue;
    }
    const std::size_t equals = given.find('=');
    if (equals == std::string_view::npos) return std::string(given) + ": needs KEY=VALUE";
    options.settings.push_back({std::string(given.substr(0, equals)), std::string(given.substr(equals + 1))});
  }
  return {};
}

/// The whole file; a complaint where it cannot be had.
std::string read_file(const std::string& path, std::string& text) {
  if (std::filesystem::is_directory(path)) return path + ": is a folder, not a file of ours";
  std::ifstream file(path, std::ios::binary);
  if (!file) return path + ": cannot be read";
  constexpr std::size_t kMostRead = 64 * kMostFileBytes;  // enough to tell how far too large a file is
  for (char block[1 << 16]; text.size() < kMostRead && (file.read(block, sizeof block), file.gcount() > 0);)
    text.append(block, std::size_t(file.gcount()));
  return {};
}

/// "18:30" of the outing's day by its own offset, or an instant; a complaint where it is neither.
std::string now_from(const std::string& text, const Plan& plan, Now& now) {
  if (const auto instant = pace::read_utc(text)) {
    now.utc_s = *instant;
    return {};
  }
  const Parsed minute = read_quantity(text, Unit::clock_minute);
  if (!minute.trouble.empty()) return "--now: 18:30 or 2026-06-13T22:30:00Z is wanted";
  now.utc_s = utc_s_of(plan, {}, minute.value);
  if (!std::isfinite(now.utc_s))
    return "--now: a time of day needs the outing's date and its UTC offset; set both, or give "
           "2026-06-13T22:30:00Z";
  return {};
}

int evaluate_file(const char* path, const Options& options, bool as_card) {
  std::string text;
  if (const std::string why = read_file(path, text); !why.empty()) return fail(why);
  LoadedOuting loaded = read_outing(text);
  if (!loaded.refusal.empty()) return fail(std::string(path) + ": " + loaded.refusal);
  for (const std::string& note : loaded.notes) std::cerr << path << ": " << note << '\n';
  for (const Setting& setting : options.settings) {
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
  if (!options.history.empty()) {
    std::string past_text;
    if (const std::string why = read_file(options.history, past_text); !why.empty()) return fail(why);
    const LoadedHistory history = read_history(past_text);
    if (!history.refusal.empty()) return fail(options.history + ": " + history.refusal);
    for (const std::string& note : history.notes) std::cerr << options.history << ": " << note << '\n';
    loaded.outing.habits.paces = own_paces(past_before(history.outings, loaded.outing));
  }
  const Plan plan = resolve(loaded.outing);
  Now now;
  if (!options.now.empty())
    if (const std::string why = now_from(options.now, plan, now); !why.empty()) return fail(why);
  const Outlook outlook = evaluate(plan, now);
  std::cout << (as_card ? card_text(field_card(loaded.outing, plan, outlook, {}))
                        : outlook_json(plan, outlook, now));
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
  Options options;
  if (verb == "--evaluate" || verb == "--card" || verb == "--check") {
    if (argc < 3) {
      status = fail(std::string(verb) + (verb == "--check" ? ": needs a check's key" : ": needs a file"));
      return true;
    }
    if (std::string why = options_from(argc, argv, 3, verb != "--check", options); !why.empty()) {
      status = fail(why);
      return true;
    }
    status = verb == "--check" ? work_out_check(argv[2], options.settings)
                               : evaluate_file(argv[2], options, verb == "--card");
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
