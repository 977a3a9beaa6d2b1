// Room for words on a drawing: what is drawn blocks its place, and a label takes the first of its places that is
// free.
#pragma once

#include <span>
#include <vector>

#include "app/look/geometry.h"

namespace gs::parts {

/// Plain geometry in logical px. Fill it with everything that labels must not touch, then place the labels, the
/// most important first.
class LabelRoom {
 public:
  /// No label leaves `bounds`.
  explicit LabelRoom(look::Box bounds) : bounds_(bounds) {}

  void block(look::Box box) { boxes_.push_back(box); }
  /// A line through the points, `half_width` to either side. Points that are not finite break the line.
  void block(std::span<const look::Point> run, float half_width);
  bool is_free(look::Box box) const;
  /// The first candidate that lies within the bounds and touches nothing; from then on it is blocked too. Null when
  /// there is none: the caller says it elsewhere, never on top of something.
  const look::Box* place(std::span<const look::Box> candidates);

 private:
  struct Piece {
    look::Point a, b;
    float half_width;
  };
  look::Box bounds_;
  std::vector<look::Box> boxes_;
  look::Box placed_{};
  std::vector<Piece> pieces_;
};

/// Whether two boxes share any area.
bool overlap(look::Box a, look::Box b);
/// Whether the straight line from a to b touches the box.
bool crosses(look::Point a, look::Point b, look::Box box);

/// Places for a label of this size along a line: above and below it, from its far end back to its start, so that a
/// name stands where the line has come to its own.
std::vector<look::Box> places_along(std::span<const look::Point> run, float width, float height, float distance);
/// Places round a point: right, left, above, below, then the four corners, at this distance.
std::vector<look::Box> places_around(look::Point at, float width, float height, float distance);

/// The same at growing distances, for a name that may stand a little off.
std::vector<look::Box> places_round_about(look::Point at, float width, float height);
/// Places beside a straight line: at its middle first, then towards its ends, on either side.
std::vector<look::Box> places_beside(look::Point a, look::Point b, float width, float height);

}  // namespace gs::parts
