// What takes long and is asked in every frame is sought once a change.
#pragma once

#include <utility>

namespace gs {

/// Keeps what was found for a question until another is asked or forget() is called. `Asked` compares with ==.
template <class Asked, class Found>
class Once {
 public:
  /// `seek()` gives the answer where it is not kept.
  template <class Seek>
  const Found& of(Asked asked, Seek seek) {
    if (!kept_ || !(asked_ == asked)) {
      found_ = seek();
      asked_ = std::move(asked);
      kept_ = true;
    }
    return found_;
  }
  void forget() { kept_ = false; }
  const Found& last() const { return found_; }  // what was found last, also after forget()

 private:
  bool kept_ = false;
  Asked asked_{};
  Found found_{};
};

}  // namespace gs
