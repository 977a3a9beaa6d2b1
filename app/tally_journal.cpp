#include "app/tally_journal.h"

#include <algorithm>
#include <charconv>
#include <initializer_list>
#include <optional>
#include <vector>

#include "core/pace/utc.h"

namespace gs {
namespace {

/// The outing's own date and name stand in its start; all other lines name the start they belong to.
constexpr std::string_view kStart = "start", kEnd = "end", kContact = "contact", kForgotten = "forgotten",
                           kBack = "back";

std::string joined(std::string_view what, std::initializer_list<std::string> rest) {
  std::string line(what);
  for (const std::string& word : rest) line += " " + word;
  return line;
}

std::string since(const Outing& outing) {
  return outing.happened.on_air.empty() ? "-" : pace::utc_text(outing.happened.on_air.back().from_utc_s);
}

std::string place(const Outing& outing) { return std::to_string(outing.happened.tally.size()); }

std::vector<std::string_view> words_of(std::string_view line) {
  std::vector<std::string_view> words;
  for (std::size_t from = 0; from <= line.size();) {
    const std::size_t to = std::min(line.find(' ', from), line.size());
    words.push_back(line.substr(from, to - from));
    from = to + 1;
  }
  return words;
}

int count_of(std::string_view word) {
  int count = 0;
  const auto [end, trouble] = std::from_chars(word.data(), word.data() + word.size(), count);
  return trouble == std::errc{} && end == word.data() + word.size() ? count : 0;
}

}  // namespace

std::string start_line(const Outing& before, double utc_s) {
  return joined(kStart, {std::to_string(before.happened.on_air.size()), pace::utc_text(pace::to_millisecond(utc_s)),
                         before.date.empty() ? "-" : before.date, before.name});
}
std::string end_line(const Outing& before, double utc_s) {
  return joined(kEnd, {since(before), place(before), pace::utc_text(pace::to_millisecond(utc_s))});
}
std::string contact_line(const Outing& before, double utc_s) {
  return joined(kContact, {since(before), place(before), pace::utc_text(pace::to_millisecond(utc_s))});
}
std::string forgotten_line(const Outing& before, double utc_s, int count) {
  return joined(kForgotten,
                {since(before), place(before), pace::utc_text(pace::to_millisecond(utc_s)), std::to_string(count)});
}
std::string take_back_line(const Outing& before) { return joined(kBack, {since(before), place(before)}); }

bool play(Outing& outing, std::string_view line) {
  const std::vector<std::string_view> words = words_of(line);
  if (words.size() < 3) return false;
  Happened& happened = outing.happened;
  if (words[0] == kStart) {
    if (words.size() < 5 || words[1] != std::to_string(happened.on_air.size())) return false;
    const std::string_view date = words[3] == "-" ? std::string_view{} : words[3];
    const std::string_view name = line.substr(std::size_t(words[4].data() - line.data()));
    const std::optional<double> at = pace::read_utc(words[2]);
    return at && date == outing.date && name == outing.name && start_on_air(happened, *at);
  }
  if (words[1] != since(outing) || words[2] != place(outing)) return false;
  if (words[0] == kBack) return take_back(happened);
  const std::optional<double> at = words.size() > 3 ? pace::read_utc(words[3]) : std::nullopt;
  if (!at) return false;
  if (words[0] == kEnd) return end_on_air(happened, *at);
  if (words[0] == kContact) return add_contact(happened, *at);
  return words[0] == kForgotten && words.size() > 4 && add_forgotten(happened, *at, count_of(words[4]));
}

}  // namespace gs
