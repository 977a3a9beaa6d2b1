// Draws every primitive of the design. Callers speak logical px; the pen multiplies, snaps to device px and fills
// the draw list. All lengths, positions and sizes below are logical px; x grows right, y grows down.
#pragma once

#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "app/look/fonts.h"
#include "app/look/geometry.h"
#include "app/look/icons.h"
#include "app/look/metrics.h"
#include "app/look/theme.h"
#include "imgui.h"

namespace gs::look {

enum class Align : unsigned char { left, centre, right };

/// How a value moved against the pin. Up always means better.
enum class Delta : unsigned char { better, worse, same };

/// Where a value in a Why panel comes from.
enum class Origin : unsigned char { published, practice, memory, yours };

/// One run of text as it was drawn, for tests of contrast and of what is cut.
struct TextRecord {
  std::string text;
  Box rect;  // advance width x line height
  Box clip;  // where it may be seen
  Face face;
  float size;
  ImU32 colour, ground;
};

class Pen {
 public:
  /// All three must outlive the pen. `fonts` tells the scale.
  Pen(ImDrawList& list, const Fonts& fonts, const Theme& theme);

  const Theme& theme() const { return theme_; }
  float scale() const { return scale_; }
  ImDrawList& list() { return list_; }

  // --- what lies under the next drawing: halos, holes and the contrast record use it (theme paper at first). Push
  // the tint before what stands on it: theme().band before a sign in the tight zone, theme().solid before a
  // button's words.
  ImU32 ground() const { return grounds_.back(); }
  void push_ground(ImU32 colour) { grounds_.push_back(colour); }
  void pop_ground() { grounds_.pop_back(); }
  void push_clip(Box box);  // narrows the clip that is there
  void pop_clip();
  Box clip() const;
  /// Appends every text drawn from now on; null stops.
  void record(std::vector<TextRecord>* into) { record_ = into; }

  // --- text (pen_text.cpp). `baseline` is the y of the baseline, so that mixed sizes stand in one line. Calls
  // return the width drawn. UTF-8; a character the font lacks is drawn as a hollow box.
  float text(float x, float baseline, std::string_view text, Face face, float size, ImU32 colour,
             Align align = Align::left);
  float width(std::string_view text, Face face, float size) const;
  /// Breaks at spaces (and at '\n') into lines no wider than `width`; a word wider than that is broken inside. The
  /// views point into `text`.
  std::vector<std::string_view> lines(std::string_view text, float width, Face face, float size) const;
  /// Whether a word had to be broken inside: what stands so narrow had better go elsewhere.
  static bool breaks_word(const std::vector<std::string_view>& lines);
  /// Wrapped text from the first baseline down, one line height apart. Returns the number of lines.
  int paragraph(float x, float baseline, float width, std::string_view text, Face face, float size, ImU32 colour,
                Align align = Align::left);
  /// `text`, shortened with an ellipsis where it is wider than `width`. For names that people typed only.
  std::string elided(std::string_view text, float width, Face face, float size) const;
  /// A bold figure with its unit or units set small: "32.9 W", "2 h 20", "90 %", "19:20". Words that hold a digit
  /// or a sign are set at `size`, words of letters at unit_size(size, ratio); the gap between is 0.17 em. Text
  /// without any digit is set at `size` as it is.
  float figure(float x, float baseline, std::string_view text, float size, ImU32 colour, Align align = Align::left,
               float ratio = type::kUnitRatio);
  float figure_width(std::string_view text, float size, float ratio = type::kUnitRatio) const;
  /// The count and the contact button: figures and + alone, bold, at any size up to the digits' own. Returns the
  /// width.
  float digits(float x, float baseline, std::string_view text, float size, ImU32 colour, Align align = Align::left);
  float digits_width(std::string_view text, float size) const;
  /// The size of this at which the digits stay sharp: it, or the largest that was baked.
  float digits_size(float size) const;
  /// The size at which the unit of a figure is set: ratio x size, in whole px, then the next type size at or above.
  static float unit_size(float size, float ratio = type::kUnitRatio);
  /// The baseline at which text of this size stands in the middle of a height (by capitals and digits).
  static float centred(float mid_y, float size) { return mid_y + size * type::kCapEm / 2; }

  // --- plain shapes (pen_shapes.cpp). Edges of boxes and axis-parallel lines snap to whole device px.
  void fill(Box box, ImU32 colour, float radius = 0);
  /// The stroke lies inside the box.
  void outline(Box box, ImU32 colour, float stroke_width = stroke::kOutline, float radius = 0);
  void line(Point a, Point b, ImU32 colour, float stroke_width = stroke::kHair);
  /// Round joins and round ends.
  void polyline(std::span<const Point> points, ImU32 colour, float stroke_width, bool closed = false);
  /// Convex only. `smooth` off where neighbours share an edge, so that no seam shows.
  void polygon(std::span<const Point> points, ImU32 colour, bool smooth = true);
  void disc(Point centre, float r, ImU32 colour);
  /// r is the middle of the stroke.
  void ring(Point centre, float r, ImU32 colour, float stroke_width);
  /// Radians, clockwise from +x (y is down); round ends.
  void arc(Point centre, float r, float from, float to, ImU32 colour, float stroke_width);
  void focus(Box box, float radius);  // ring outside a target that has the keyboard's focus

  // --- broken lines and hatching (pen_dashes.cpp). `pattern`: on, off, on, off... Dashes run on round corners.
  void dashed(std::span<const Point> points, std::span<const float> pattern, ImU32 colour, float stroke_width);
  void dashed_ring(Point centre, float r, ImU32 colour, float stroke_width, int dashes = 8);
  void dashed_box(Box box, std::span<const float> pattern, ImU32 colour, float stroke_width, float radius = 0);
  void hatch(Box box, ImU32 colour, float gap = 8, float stroke_width = stroke::kLine);  // rising to the right
  void hatch_round(Box box, float radius, ImU32 colour, float gap = 8, float stroke_width = stroke::kLine);
  void limit_line(float x0, float x1, float y, ImU32 colour);          // 2 px with hachures below, every 9 px
  void limit_line_upright(float x, float y0, float y1, ImU32 colour);  // the phone's column: hachures to the left
  void leader(float x0, float x1, float baseline, ImU32 colour);       // dots between a label and its value

  // --- signs (pen_signs.cpp)
  /// In its own colour of the theme, or in the one given: on a dark bar its shape alone says which it is.
  void sign(Sign sign, Point centre, float r, bool halo = true, ImU32 own = 0);
  void old_data(Point centre, float r);  // dashed ring round a sign that rests on stale input
  void delta(Delta delta, float x, float baseline, ImU32 colour,
             float size = 12);                        // x: left; stands on the baseline
  void diamond(Point centre, float r, ImU32 colour);  // a pinned value; hollow
  void origin(Origin origin, Point centre, ImU32 colour, float size = 12);
  void icon(Icon icon, float x, float y, float size, ImU32 colour,
            float stroke_width = stroke::kRule);           // x, y: top left
  void brand(float x, float y, float size, ImU32 colour);  // the mark in the header: an inverted V over a sheet

  // --- instruments (pen_instruments.cpp)
  /// Scale bar whose segments end at these x, outlined; filled ones alternate.
  void scale_track(Box bar, std::span<const float> ends, ImU32 colour);
  void scale_bar(float x, float y, float segment_w, int segments, ImU32 colour);        // under a drawing to scale
  void thumb(Point centre, bool dragged, bool pressed = false);                         // the slider's eyelet
  void pennant(float x, float foot, float height, ImU32 colour, bool to_left = false);  // filled flag on a pole
  void now_mark(float x, float top, float foot, ImU32 colour);                          // point down on a stem
  /// From now (hollow) to then (filled) on a rule from x0 to x1.
  void dumbbell(float x0, float x1, float y, float now_x, float then_x, ImU32 colour);
  /// Strokes in fives, then a dot for each one still wanted, in a line of this height. Returns the width.
  float tally(float x, float y, float height, int count, int wanted, ImU32 colour, ImU32 dots);
  static float tally_width(float height, int count, int wanted);

  // --- device px (for parts that must reach the list themselves)
  float device(float logical) const { return logical * scale_; }
  float snap(float logical) const;              // to whole device px, given back in logical px
  float hair() const { return 1.0F / scale_; }  // one device px in logical px

 private:
  struct Piece {  // of a figure
    std::string_view text;
    float size, gap_before;
  };
  static std::vector<Piece> pieces(std::string_view figure, float size, float ratio);

  // everything below is in device px
  ImVec2 at(Point p) const { return {p.x * scale_, p.y * scale_}; }
  float edge(float logical) const;       // where an edge stands: whole px
  float stroke_px(float logical) const;  // of an edge-parallel stroke: whole px, at least 1
  float thick_px(float logical) const;   // of any other stroke: at least 1
  float text_px(std::string_view text, const ImFont& font) const;
  void box_px(float x0, float y0, float x1, float y1, ImU32 colour);
  void polygon_px(std::vector<ImVec2>& points, ImU32 colour);
  void disc_px(ImVec2 centre, float r, ImU32 colour);
  void stroke_run(const std::vector<ImVec2>& points, ImU32 colour, float width, bool closed, bool round_ends);
  void hatch_shape(std::span<const Point> convex, ImU32 colour, float gap, float stroke_width);

  ImDrawList& list_;
  const Fonts& fonts_;
  const Theme& theme_;
  float scale_;
  std::vector<ImU32> grounds_;
  std::vector<TextRecord>* record_ = nullptr;
};

/// A ground for the length of a block.
class Ground {
 public:
  Ground(Pen& pen, ImU32 colour) : pen_(pen) { pen_.push_ground(colour); }
  ~Ground() { pen_.pop_ground(); }
  Ground(const Ground&) = delete;
  Ground& operator=(const Ground&) = delete;

 private:
  Pen& pen_;
};

}  // namespace gs::look
