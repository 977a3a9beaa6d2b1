// What a sheet is written with. A sheet is a list of parts down a column; parts draw, take the hand and write
// mirror records; sheets do none of the three.
#pragma once

#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "app/look/pen.h"
#include "app/mirror/mirror.h"
#include "app/parts/hand.h"
#include "app/parts/typing.h"
#include "app/session.h"
#include "core/outing/finding.h"

namespace gs::parts {

struct TimeScale;

/// Requests of a keyboard or an assistive technology, by id; a press goes through Hand.
struct Asked {
  std::map<std::string, double, std::less<>> set;
  std::map<std::string, int, std::less<>> steps;          // +1, -1, +10, ...
  std::map<std::string, std::string, std::less<>> typed;  // a digit pressed on a number: the keypad opens with it
};

struct Plot;
struct Scene;

enum class Weight : unsigned char { plain, main };

class Ui {
 public:
  Ui(Session& session, look::Pen& pen, Hand& hand, Asked& asked, Typing& typing, look::Box surface, double now_s);

  Session& session;
  look::Pen& pen;
  Hand& hand;
  Asked& asked;
  Typing& typing;
  const look::Theme& theme;
  const look::Box surface;  // logical px, safe area taken off
  const look::Layout layout;
  const double now_s;
  float margin() const {
    return slim() ? look::space::kMarginSlim : phone() ? look::space::kMarginPhone : look::space::kMarginTablet;
  }
  bool phone() const { return layout == look::Layout::phone; }
  /// Large letters on a small surface: not even a phone's width, or too little height for anything to stand still.
  bool slim() const { return surface.w < look::kSlimWidth; }
  bool low() const { return phone() && surface.h < look::kLowHeight; }

  // --- the column that parts fill from the top down
  float x = 0, w = 0, y = 0;
  void column(float left, float width, float top);
  float right() const { return x + w; }
  void gap(float height = look::space::kGap) { y += height; }
  look::Box take(float height);  // the next box of the column

  /// A part of the surface that scrolls; parts inside go on from y. Returns with the clip on; end_scroll takes it
  /// off.
  void begin_scroll(std::string id, look::Box box);
  void end_scroll();

  // --- mirror
  mirror::Tree tree;
  void open_group(mirror::Role role, std::string id, std::string name, look::Box box);
  void close_group() { groups_.pop_back(); }
  mirror::Node& node(mirror::Role role, std::string id, std::string name, look::Box box);  // read-only record
  /// An interactive record with its target; focus ring included. True when it was tapped or pressed.
  bool target(mirror::Node node, look::Box box, float radius = look::radius::kChip,
              Target::Kind kind = Target::Kind::tap, look::Box thumb = {});
  mirror::Node& last_node() { return tree.nodes.back(); }
  bool visible(look::Box box) const;
  void wake_at(double s) {
    if (wake_s == 0 || s < wake_s) wake_s = s;
  }
  double wake_s = 0;                  // earliest time another frame is needed; 0: none
  std::string focus;                  // id that has the keyboard
  std::string keyboard_to;            // a text field was tapped: it gets the keyboard
  bool show_focus = false;            // it has only just got it: bring it into sight
  bool focus_in_sight = false;        // it was drawn, whole, where it can be seen
  std::optional<float> scroll_focus;  // set when the focused record lies outside its scroll area

  // --- plain parts (plain.cpp)
  void title(std::string_view text, std::string_view id);
  void section(std::string_view text, std::string_view id);
  void paragraph(std::string_view text, std::string_view id, ImU32 colour);
  void rule();

  // --- buttons (buttons.cpp)
  bool button(std::string_view id, std::string_view label, Weight weight = Weight::plain,
              look::Icon icon = look::Icon::count);
  bool button_in(look::Box box, std::string_view id, std::string_view label, Weight weight, look::Icon icon,
                 float size, bool enabled = true, std::string_view spoken = {},
                 float radius = look::radius::kButton);
  bool icon_button(look::Box box, std::string_view id, std::string_view spoken, look::Icon icon, ImU32 colour);
  struct Chip {
    std::string id, label, spoken;
    bool chosen;
  };
  /// One row or more of chips; returns the index of the tapped one, or -1.
  int chips(std::string_view id, std::string_view name, const std::vector<Chip>& items);
  /// Label, leader dots, value, chevron.
  bool row(std::string_view id, std::string_view label, std::string_view value, std::string_view spoken,
           signed char expanded, bool value_bold = true);

  // --- texts (text_field.cpp)
  void text_field(TextField field);  // label, field, below it the hint or what is wrong
  void text_lever(L id);

  struct TickRow {
    std::string id, name, words, note;   // note: small and slanted, where it comes from
    bool ticked = false, round = false;  // round: something to look at; else something to do
  };
  bool tick_row(const TickRow& row);  // tick_row.cpp; true when it was tapped
  static constexpr float kTickMark = 30;
  void tick_mark(look::Box mark, bool ticked, bool round);

  // --- levers (lever.cpp, keypad.cpp)
  void slider(L id);                // the whole control
  float slider_height(L id) const;  // of the whole control at this width
  void lever_row(L id);             // a row that unfolds into a slider or chips
  void lever_chips(L id);           // choice levers
  void lever_list(L id);            // long choice lists, a row an option
  void keypad();

  // --- readings (reading.cpp)
  void reading_row(R id);                                                        // label, leader, figure, state
  void headline(R id, std::string_view beside, std::string_view spoken_beside);  // the one headline of a sheet
  void why_panel();
  void show_page(std::string_view page);  // why_foot.cpp: a page of words, in a tab or as a sheet
  /// Below an answer: its method, and the answer as text to the clipboard.
  void answer_foot(std::string_view id, Link link, const std::string& as_text);

  // --- turned round (turn_round.cpp): what one lever would have to be
  void turn_keypad();   // the same, typed
  void turn_goals();    // what is to be reached, where more than one thing may be
  void turn_target();   // the value to reach
  void turn_answers();  // turn_answers.cpp: a lever an answer, each taken by a tap
  void turn_choices();  // which levers may change, and the way back
  void fits_target();   // what_fits.cpp: tree, stake and band that every kind is held against
  void fits_answers();  // every kind, whether it fits, taken by a tap

  // --- drawings any sheet may fill
  /// A plot over the column's width. Returns where its reading cursor is wanted, when a hand or a key moved it.
  std::optional<double> plot(const Plot& plot, float height);  // plot.h, plot.cpp
  void to_scale(const Scene& scene, float height);             // to_scale.h, to_scale.cpp
  void side_view(float height);                                // side_view.cpp: the antenna from the side
  void swr_plot(float height);                                 // side_view.cpp: SWR and what the set gives

  // --- instruments of one sheet each
  void chain_strip(Link open);      // chain_strip.cpp: above every sheet
  void chain_overview();            // chain_overview.cpp
  void chain_column();              // chain_column.cpp: phone
  void chain_level(look::Box box);  // chain_folded.cpp: on one level line, on a phone's side
  /// Safety, Clock, Kit in a box; side by side becomes a row each where they would not fit. Returns the height
  /// used.
  enum class Beside : unsigned char { column, across, line };           // line: across, a line high
  float alongside(look::Box box, Beside how, Link open = Link::count);  // alongside.cpp
  void watts_bar();                                                     // watts_bar.cpp
  void findings(const std::vector<Finding>& found);  // findings.cpp: what figures mean, in sentences
  void loss_plot();                 // line_plots.cpp: loss of the feed line by frequency, published points as dots
  void along_plot();                // SWR and voltage along it; a band where an SWR is all that is known
  void current_plot(float height);  // current_plot.cpp: what the set draws by power, with what was read
  void rolls(int most);             // rolls.cpp: what another roll would change
  void check_panel();               // check_panel.cpp
  void time_line();                 // time_line.cpp: arrival to leave-by, the battery under it
  /// what_ifs.cpp: the cheapest change of what limits the plan, then one step of each lever that helps.
  void what_ifs(int most, const std::optional<Remedy>& cheapest);
  void kit_list();     // kit_list.cpp: what is carried, ticked, its spares
  void kit_foot();     // kit_lists.cpp: on a phone, to adding and to the list of packing down
  void kit_at_hand();  // kit_list.cpp: its weight, what is missing, what helps, what else may come
  /// cautions.cpp: what to look at, to do, to know; on another link's sheet those that it raises.
  void cautions(Link link);
  void next_look_foot();  // cautions.cpp: asks what nobody looked at yet; nothing once all was looked at
  float next_look_height() const;
  void may_transmit();  // cautions.cpp: may one transmit here, in one line
  void safety_plan();   // safety_plan.cpp: the site from above, to scale

 private:
  struct ScrollState {
    std::string id;
    look::Box box;
    float start_y;
  };
  void place(mirror::Node& record, look::Box box) const;
  TimeScale time_scale();
  void time_line_edges(const TimeScale& scale, look::Box bar);  // time_line_edges.cpp
  std::vector<std::string> groups_;
  std::vector<ScrollState> scrolls_;
};

look::Sign sign_of(State state);
ImU32 colour_of(const look::Theme& theme, State state);
look::Icon icon_of(Link link);

}  // namespace gs::parts
