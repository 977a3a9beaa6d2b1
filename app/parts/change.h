// How readings and their change against the pin are written and drawn, for every part that shows one.
#pragma once

#include <string>

#include "app/look/pen.h"
#include "app/session.h"

namespace gs::parts {

std::string figure_text(R id, const Figure& figure, const Style& style);  // "" where not known
std::string figure_spoken(R id, const Figure& figure, const Plan& plan, const Style& style);
/// What a remedy gains, and what is paid for it: "+12 points; SWR at radio +0.1".
std::string remedy_effect(const Remedy& remedy);
Change change_of(const Session& session, R id);
std::string change_spoken(const Session& session, R id);  // ", +2.5 W, better than pinned"; "" without a pin
void draw_change(look::Pen& pen, const look::Theme& theme, float x, float baseline, R id, const Change& change,
                 const Style& style, look::Align align = look::Align::left);
/// The same on as many lines as `room` asks for. Returns how many.
int draw_change_in(look::Pen& pen, const look::Theme& theme, float x, float baseline, float room, R id,
                   const Change& change, const Style& style);

}  // namespace gs::parts
