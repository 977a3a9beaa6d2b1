// The field card: everything of an outing that is needed on paper, on one page, for a screen, a printer or a file.
#pragma once

#include <string>
#include <utility>
#include <vector>

#include "core/outing/outlook.h"

namespace gs {

struct CardPart {
  std::string heading;
  std::vector<std::pair<std::string, std::string>> rows;  // what, how much
  std::vector<std::string> lines;                         // to look at, to do, to tick
};
struct FieldCard {
  std::string title;  // "Quillet Meadow, 2026-06-13"
  std::vector<CardPart> parts;
};

/// The verdict; times with UTC beside them; by link what the person set and every result that is known, a result
/// that does not hold with its word; stints; cautions; the kit to tick; boxes for the contacts. Nothing that is not
/// known stands on it, but the verdict says how many links are not.
FieldCard field_card(const Outing& outing, const Plan& plan, const Outlook& outlook, const Style& style);

/// As plain text, lines of at most 78 characters but for long sentences; ends with a line break.
std::string card_text(const FieldCard& card);
/// {"title", "parts": [{"heading", "rows": [[what, how much]], "lines": [text]}]}
std::string card_json(const FieldCard& card);

}  // namespace gs
