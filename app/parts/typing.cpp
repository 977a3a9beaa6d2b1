#include "app/parts/typing.h"

#include <algorithm>
#include <utility>

#include "core/outing/utf8.h"

namespace gs::parts {
namespace {

using platform::Key;

/// Without controls, outer blanks and what is beyond the most.
std::string tidy(std::string_view text, std::size_t most_chars, bool lines) {
  const auto cleaned = lines ? clean_lines : clean_text;
  std::string clean = cleaned(text, std::string_view::npos);
  const std::size_t from = clean.find_first_not_of(" \n");
  if (from == std::string::npos) return {};
  clean = clean.substr(from, clean.find_last_not_of(" \n") - from + 1);
  return cleaned(clean, most_chars);
}

std::size_t chars_of(std::string_view text) {
  return std::size_t(std::count_if(text.begin(), text.end(),
                                   [](char c) { return (static_cast<unsigned char>(c) & 0xC0) != 0x80; }));
}

}  // namespace

void Typing::drawn(const TextField& field) {
  next_[field.id] = {field.value, field.most_chars, field.lines, field.commit};
}

void Typing::end_frame() {
  if (const auto at = fields_.find(id_); at != fields_.end() && edited_) next_.insert(*at);
  fields_ = std::move(next_);
  next_.clear();
}

void Typing::give(const std::string& id) {
  if (id == id_) return;
  if (!id_.empty() && edited_) commit(id_, text_);
  id_ = id;
  edited_ = false;
  if (id_.empty()) return;
  const auto refused = refused_.find(id_);
  const auto field = fields_.find(id_);
  text_ = refused != refused_.end() ? refused->second.text : field != fields_.end() ? field->second.value : "";
  select_all();
}

const std::string& Typing::text(const TextField& field) const {
  if (has(field.id) && edited_) return text_;
  const auto refused = refused_.find(field.id);
  return refused != refused_.end() ? refused->second.text : field.value;
}

const std::string& Typing::trouble(const std::string& id) const {
  static const std::string none;
  const auto refused = refused_.find(id);
  return refused == refused_.end() || (has(id) && edited_) ? none : refused->second.why;
}

void Typing::typed(const std::string& id, std::string text) {
  if (!has(id)) give(id);
  text_ = std::move(text);
  caret_ = anchor_ = text_.size();
  edited_ = true;
}

void Typing::commit(const std::string& id, const std::string& text) {
  const auto found = fields_.find(id);
  if (found == fields_.end()) return;
  const Known field = found->second;  // what it does may draw the fields anew
  const std::string clean = tidy(text, field.most_chars, field.lines > 1);
  std::string why = field.commit(clean);
  if (why.empty()) {
    refused_.erase(id);
  } else {
    refused_[id] = {clean, std::move(why)};
  }
  if (!has(id)) return;
  text_ = clean;
  edited_ = false;
  select_all();
}

void Typing::cancel(const std::string& id) {
  refused_.erase(id);
  if (!has(id)) return;
  const auto field = fields_.find(id);
  text_ = field != fields_.end() ? field->second.value : "";
  edited_ = false;
  select_all();
}

bool Typing::key(const platform::KeyPress& press) {
  if (id_.empty()) return false;
  const auto move_to = [&](std::size_t byte) { put_caret(byte, press.shift); };
  switch (press.key) {
    case Key::enter:
      many_lines() ? new_line() : commit(id_, text_);
      return true;
    case Key::escape:
    case Key::undo:
      if (!edited_ && refused_.count(id_) == 0) return false;
      cancel(id_);
      return true;
    case Key::left:
      move_to(press.shift || first() == last() ? before(caret_) : first());
      return true;
    case Key::right:
      move_to(press.shift || first() == last() ? after(caret_) : last());
      return true;
    case Key::home:
      move_to(0);
      return true;
    case Key::end:
      move_to(text_.size());
      return true;
    case Key::backspace:
      first() == last() ? erase(before(caret_), caret_) : erase(first(), last());
      return true;
    case Key::erase_next:
      first() == last() ? erase(caret_, after(caret_)) : erase(first(), last());
      return true;
    case Key::space:
      insert(" ");
      return true;
    case Key::character: {
      std::string text;
      append_rune(text, char32_t(press.code_point));
      insert(text);
      return true;
    }
    case Key::select_all:
      select_all();
      return true;
    case Key::copy:
    case Key::cut:
      if (first() != last()) platform::copy_text(text_.substr(first(), last() - first()));
      if (press.key == Key::cut) erase(first(), last());
      return true;
    case Key::paste:
      insert(platform::pasted_text());
      return true;
    case Key::up:
    case Key::down:
      if (many_lines()) move_to(other_line(press.key == Key::up ? -1 : 1));
      return true;
    case Key::page_up:
    case Key::page_down:
      return true;  // nowhere to go
    case Key::tab:
    case Key::redo:
      return false;
  }
  return false;
}

void Typing::put_caret(std::size_t byte, bool select) {
  caret_ = std::min(byte, text_.size());
  if (!select) anchor_ = caret_;
}

void Typing::insert(std::string_view text) {
  const auto field = fields_.find(id_);
  const std::size_t most = field != fields_.end() ? field->second.most_chars : 0;
  const auto cleaned = many_lines() ? clean_lines : clean_text;
  std::string clean = cleaned(text, std::string_view::npos);
  const std::size_t rest = chars_of(text_) - chars_of(std::string_view(text_).substr(first(), last() - first()));
  if (most > 0) clean = cleaned(clean, most > rest ? most - rest : 0);
  if (clean.empty()) return;
  const std::size_t from = first();
  text_.replace(from, last() - from, clean);
  caret_ = anchor_ = from + clean.size();
  edited_ = true;
}

void Typing::erase(std::size_t from, std::size_t to) {
  if (from == to) return;
  text_.erase(from, to - from);
  caret_ = anchor_ = from;
  edited_ = true;
}

bool Typing::many_lines() const {
  const auto field = fields_.find(id_);
  return field != fields_.end() && field->second.lines > 1;
}

void Typing::new_line() { insert("\n"); }

std::size_t Typing::other_line(int by) const {
  const auto start_of = [&](std::size_t byte) {
    const std::size_t at = byte == 0 ? std::string::npos : text_.rfind('\n', byte - 1);
    return at == std::string::npos ? 0 : at + 1;
  };
  const std::size_t start = start_of(caret_), into = caret_ - start;
  if (by < 0 && start == 0) return 0;
  const std::size_t end = text_.find('\n', caret_);
  if (by > 0 && end == std::string::npos) return text_.size();
  const std::size_t first = by < 0 ? start_of(start - 1) : end + 1;
  const std::size_t last = std::min(text_.find('\n', first), text_.size());
  std::size_t byte = std::min(first + into, last);
  while (byte > first && byte < text_.size() && (static_cast<unsigned char>(text_[byte]) & 0xC0) == 0x80) --byte;
  return byte;
}

void Typing::select_all() {
  anchor_ = 0;
  caret_ = text_.size();
}

std::size_t Typing::before(std::size_t byte) const {
  while (byte > 0 && (static_cast<unsigned char>(text_[--byte]) & 0xC0) == 0x80) {
  }
  return byte;
}

std::size_t Typing::after(std::size_t byte) const {
  if (byte < text_.size()) ++byte;
  while (byte < text_.size() && (static_cast<unsigned char>(text_[byte]) & 0xC0) == 0x80) ++byte;
  return byte;
}

}  // namespace gs::parts
