// What is being typed into a text field, and what was typed there and cannot be. Where the page lays a field of its
// own over ours, it tells every change; natively the keys come here.
#pragma once

#include <cstddef>
#include <functional>
#include <map>
#include <string>
#include <string_view>

#include "app/platform/platform.h"

namespace gs::parts {

/// A text field as its sheet asks for it.
struct TextField {
  std::string id, label;
  std::string value;  // what is set
  std::string hint;   // a line under it while nothing is wrong; may be empty
  std::size_t most_chars = 80;
  int lines = 1;  // drawn high; more than one: the text may hold line breaks
  /// Takes the text, cleaned of controls (breaks stay where there are lines) and outer blanks, or says why it
  /// cannot be. Called at any time while the field is on screen: it must hold nothing that lives for one frame
  /// only.
  std::function<std::string(const std::string&)> commit;
};

class Typing {
 public:
  /// A field was drawn in this frame.
  void drawn(const TextField& field);
  /// Fields that were not drawn since the last call are gone; one in which something is being typed stays
  /// reachable.
  void end_frame();

  /// The keyboard goes to this field (everything in it selected) or away from all ("": what was typed counts).
  void give(const std::string& id);
  const std::string& id() const { return id_; }
  bool has(std::string_view id) const { return !id.empty() && id_ == id; }

  /// What stands in the field: what is typed, else what was refused, else what is set.
  const std::string& text(const TextField& field) const;
  /// Why what stands there cannot be, or "".
  const std::string& trouble(const std::string& id) const;
  std::size_t caret() const { return caret_; }
  std::size_t first() const { return caret_ < anchor_ ? caret_ : anchor_; }  // of the selection, bytes
  std::size_t last() const { return caret_ < anchor_ ? anchor_ : caret_; }

  /// The page's own field: what stands there now, and how it ends.
  void typed(const std::string& id, std::string text);
  void commit(const std::string& id, const std::string& text);
  void cancel(const std::string& id);

  /// A key for the field that has the keyboard. False: the key is not for it (Tab, Escape with nothing typed, ...).
  bool key(const platform::KeyPress& press);
  /// The caret goes to this byte, with or without the other end of the selection.
  void put_caret(std::size_t byte, bool select);

 private:
  struct Known {
    std::string value;
    std::size_t most_chars = 0;
    int lines = 1;
    std::function<std::string(const std::string&)> commit;
  };
  struct Refused {
    std::string text, why;
  };
  void insert(std::string_view text);
  void erase(std::size_t from, std::size_t to);
  void select_all();
  void new_line();
  /// The same distance from its start in the line above or below; breaks alone part lines here.
  std::size_t other_line(int by) const;
  bool many_lines() const;
  std::size_t before(std::size_t byte) const;
  std::size_t after(std::size_t byte) const;

  std::map<std::string, Known> fields_, next_;
  std::map<std::string, Refused> refused_;
  std::string id_, text_;
  std::size_t caret_ = 0, anchor_ = 0;
  bool edited_ = false;
};

}  // namespace gs::parts
