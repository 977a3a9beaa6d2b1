// A name or a note in the person's own letters. The page lays a real field over this one while it has the keyboard;
// natively the text is edited here.
#include <algorithm>
#include <utility>
#include <vector>

#include "app/parts/ui.h"

namespace gs::parts {

using look::Box;
using look::Face;
using mirror::Role;
namespace type = look::type;

namespace {

constexpr float kFieldHigh = 52, kInside = 12;

/// The byte of the text that stands nearest to x.
std::size_t byte_at(const look::Pen& pen, std::string_view text, float x) {
  std::size_t best = 0;
  float nearest = std::abs(x);
  for (std::size_t byte = 1; byte <= text.size(); ++byte) {
    if (byte < text.size() && (static_cast<unsigned char>(text[byte]) & 0xC0) == 0x80) continue;
    const float off = std::abs(pen.width(text.substr(0, byte), Face::regular, type::kBody) - x);
    if (off < nearest) {
      nearest = off;
      best = byte;
    }
  }
  return best;
}

void draw_text(Ui& ui, Box box, const std::string& text, bool here) {
  look::Pen& pen = ui.pen;
  const Box inside{box.x + kInside, box.y + 4, box.w - 2 * kInside, box.h - 8};
  const std::string_view all = text;
  const auto x_of = [&](std::size_t byte) {
    return pen.width(all.substr(0, std::min(byte, all.size())), Face::regular, type::kBody);
  };
  const float base = look::Pen::centred(box.mid_y(), type::kBody);
  if (!here) {
    pen.text(inside.x, base, pen.elided(text, inside.w, Face::regular, type::kBody), Face::regular, type::kBody,
             ui.theme.ink);
    return;
  }
  const Typing& typing = ui.typing;
  const float caret = x_of(typing.caret());
  const float left = inside.x - std::max(0.0F, caret - inside.w + 3);  // the caret stays in sight
  pen.push_clip(inside);
  if (typing.first() != typing.last())
    pen.fill({left + x_of(typing.first()), box.mid_y() - 15, x_of(typing.last()) - x_of(typing.first()), 30},
             ui.theme.band);
  {
    const look::Ground ground(pen, typing.first() != typing.last() ? ui.theme.band : pen.ground());
    pen.text(left, base, text, Face::regular, type::kBody, ui.theme.ink);
  }
  pen.line({left + caret, box.mid_y() - 14}, {left + caret, box.mid_y() + 14}, ui.theme.ink, look::stroke::kRule);
  pen.pop_clip();
}

/// Where each drawn line of a text on several lines begins and ends, bytes.
std::vector<std::pair<std::size_t, std::size_t>> spans_of(const look::Pen& pen, const std::string& text,
                                                          float room) {
  std::vector<std::pair<std::size_t, std::size_t>> spans;
  for (const std::string_view line : pen.lines(text, room, Face::regular, type::kBody)) {
    const std::size_t from = std::size_t(line.data() - text.data());
    spans.emplace_back(from, from + line.size());
  }
  return spans;
}

void draw_lines(Ui& ui, Box box, const std::string& text, bool here) {
  look::Pen& pen = ui.pen;
  const std::string_view all = text;
  const float step = type::line_height(type::kBody), left = box.x + kInside;
  const Typing& typing = ui.typing;
  const auto spans = spans_of(pen, text, box.w - 2 * kInside);
  std::size_t with_caret = 0;
  for (std::size_t i = 0; i < spans.size(); ++i)
    if (spans[i].first <= typing.caret()) with_caret = i;
  for (std::size_t i = 0; i < spans.size(); ++i) {
    const auto& [from, to] = spans[i];
    const auto x_of = [&, from = from, to = to](std::size_t byte) {
      const std::size_t end = std::clamp(byte, from, to);
      return left + pen.width(all.substr(from, end - from), Face::regular, type::kBody);
    };
    const float top = box.y + 10 + step * float(i), base = top + type::kBody;
    const bool marked = here && typing.first() < to && typing.last() > from;
    if (marked)
      pen.fill({x_of(typing.first()), top, x_of(typing.last()) - x_of(typing.first()), step}, ui.theme.band);
    const look::Ground ground(pen, marked ? ui.theme.band : pen.ground());
    pen.text(left, base, all.substr(from, to - from), Face::regular, type::kBody, ui.theme.ink);
    if (here && i == with_caret)
      pen.line({x_of(typing.caret()), top}, {x_of(typing.caret()), top + step}, ui.theme.ink, look::stroke::kRule);
  }
}

}  // namespace

void Ui::text_field(TextField field) {
  const bool here = focus == field.id && typing.has(field.id);
  const std::string text = typing.text(field);
  const std::string trouble = typing.trouble(field.id);
  const std::vector<std::string_view> label_lines = pen.lines(field.label, w, Face::bold, type::kLabel);
  const float step = type::line_height(type::kLabel);
  for (const std::string_view line : label_lines) {
    pen.text(x, y + type::kLabel, line, Face::bold, type::kLabel, theme.ink);
    gap(step);
  }
  gap(4);
  const bool many = field.lines > 1;
  const std::size_t drawn_lines = many ? spans_of(pen, text, w - 2 * kInside).size() : 1;
  const float lines_h =
      float(std::max(drawn_lines, std::size_t(field.lines))) * type::line_height(type::kBody) + 20;
  const Box box = take(many ? lines_h : kFieldHigh);
  pen.fill(box, theme.paper, look::radius::kKey);
  pen.outline(box, trouble.empty() ? theme.ink2 : theme.fails,
              trouble.empty() ? look::stroke::kOutline : look::stroke::kRule, look::radius::kKey);
  {
    const look::Ground ground(pen, theme.paper);
    many ? draw_lines(*this, box, text, here) : draw_text(*this, box, text, here);
  }
  mirror::Node record;
  record.role = Role::textbox;
  record.id = field.id;
  record.name = field.label;
  record.value = text;
  record.trouble = trouble;
  record.many_lines = many;
  record.most = double(field.most_chars);
  typing.drawn(field);
  if (hand.down(field.id) && here && !many) {  // a mouse that presses puts the caret there
    const float from = hand.down_x() - box.x - kInside;
    typing.put_caret(byte_at(pen, text, from), false);
    wake_at(now_s);
  }
  if (target(std::move(record), box, look::radius::kKey)) {
    keyboard_to = field.id;
    wake_at(now_s);
  }
  if (!trouble.empty() || !field.hint.empty()) {
    const std::string& words = trouble.empty() ? field.hint : trouble;
    const float indent = trouble.empty() ? 0 : 24;
    gap(4);
    if (!trouble.empty()) pen.sign(look::Sign::fails, {x + 9, y + type::kLabel - 6}, look::sign::kList);
    const int lines = pen.paragraph(x + indent, y + type::kLabel, w - indent, words, Face::regular, type::kLabel,
                                    trouble.empty() ? theme.ink2 : theme.fails);
    const Box below = take(float(lines) * step + 2);
    node(trouble.empty() ? Role::text : Role::status, field.id + ":below", words, below).live = !trouble.empty();
  }
}

void Ui::text_lever(L id) {
  const Lever& row = lever(id);
  if (row.applies && !row.applies(session.plan())) return;
  gap();
  const bool set = session.plan().has(id);
  Session* const keeper = &session;  // outlives every frame
  text_field({.id = std::string(row.key),
              .label = std::string(row.name),
              .value = set ? value_text(session.plan(), id, session.style()) : std::string{},
              .hint = std::string(row.source),
              .most_chars = 80,
              .commit = [keeper, id](const std::string& text) {
                return keeper->set(id, text.empty() ? Value{} : Value{text});
              }});
  gap();
}

}  // namespace gs::parts
