// Every sheet and panel at every layout: what the hand can reach is in the mirror, large enough, named, once; texts
// are readable.
#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <functional>
#include <set>

#include "app/mirror/hooks.h"
#include "imgui.h"
#include "tests/app/stage.h"

using namespace gs;
using stage::machine;
using stage::Stage;

namespace {

struct Screen {
  std::string name;
  std::function<void(Stage&)> open;
};

void go(Stage& stage, Sheet sheet, Link link = Link::feedline, Panel panel = Panel::none) {
  View& view = stage.session().view;
  view.sheet = sheet;
  view.link = link;
  view.panel = panel;
}

const std::vector<L> kTurnLevers = {L::battery_capacity_ah, L::radio_transmit_power_w, L::lead_wire,
                                    L::radio_transmit_share_pct};

const std::vector<Screen>& screens() {
  static const std::vector<Screen> all = {
      {"first run", [](Stage&) {}},
      {"overview", [](Stage& s) { s.open_sample(); }},
      {"overview, pinned and changed",
       [](Stage& s) {
         s.open_sample();
         s.session().pin();
         s.session().set(L::feedline_length_m, 60.0);
       }},
      {"feed line",
       [](Stage& s) {
         s.open_sample();
         go(s, Sheet::link);
       }},
      {"feed line, pinned and changed",
       [](Stage& s) {
         s.open_sample();
         s.session().pin();
         s.session().set(L::feedline_length_m, 60.0);
         go(s, Sheet::link);
       }},
      {"feed line, nothing set", [](Stage& s) { go(s, Sheet::link); }},
      {"feed line, row open",
       [](Stage& s) {
         s.open_sample();
         go(s, Sheet::link);
         s.session().view.unfolded = "radio.transmit_power_w:row";
       }},
      {"feed line, contradiction",
       [](Stage& s) {
         s.open_sample();
         s.session().set(L::feedline_measured_swr, 90.0);
         go(s, Sheet::link);
       }},
      {"feed line, an SWR alone",
       [](Stage& s) {
         s.open_sample();
         s.session().set(L::feedline_measured_swr, 2.5);
         go(s, Sheet::link);
       }},
      {"radio, three readings of the set",
       [](Stage& s) {
         s.open_sample();
         s.session().set_all({{L::radio_full_power_w, 100.0},
                              {L::radio_read_one_w, 5.0},
                              {L::radio_read_one_a, 7.0},
                              {L::radio_read_two_w, 100.0},
                              {L::radio_read_two_a, 19.5},
                              {L::radio_read_three_w, 20.0},
                              {L::radio_read_three_a, 10.3}},
                             "readings");
         go(s, Sheet::link, Link::radio);
       }},
      {"battery, turned round, hours typed",
       [](Stage& s) {
         s.open_sample();
         go(s, Sheet::link, Link::battery, Panel::keypad);
         s.session().view.turn = {R::power_runtime_h, 3, 0.25, 100, kTurnLevers, kTurnLevers};
         s.session().view.lever = L::count;
         s.session().view.typed = "4";
       }},
      {"battery, turned round",
       [](Stage& s) {
         s.open_sample();
         go(s, Sheet::link, Link::battery, Panel::turned);
         s.session().view.turn = {R::power_runtime_h, 3, 0.25, 100, kTurnLevers, kTurnLevers};
       }},
      {"feed line, turned round",
       [](Stage& s) {
         s.open_sample();
         go(s, Sheet::link, Link::feedline);
         s.frame();
         s.shell().act({"turn:open", platform::MirrorAction::Verb::press});
       }},
      {"battery, turned round, all may change and none can",
       [](Stage& s) {
         s.open_sample();
         go(s, Sheet::link, Link::battery, Panel::turned);
         s.session().view.turn = {R::power_runtime_h, 99, 0.25, 100, kTurnLevers, kTurnLevers};
       }},
      {"lead-acid battery, pinned and changed",
       [](Stage& s) {
         s.open_sample();
         s.session().set(L::battery_chemistry, std::string("sealed_lead"));
         s.session().pin();
         s.session().set(L::radio_transmit_power_w, 20.0);
         go(s, Sheet::link, Link::battery);
       }},
      {"why",
       [](Stage& s) {
         s.open_sample();
         go(s, Sheet::link, Link::feedline, Panel::why);
         s.session().view.why = R::feedline_arrives_pct;
       }},
      {"keypad",
       [](Stage& s) {
         s.open_sample();
         go(s, Sheet::link, Link::feedline, Panel::keypad);
         s.session().view.lever = L::radio_transmit_power_w;
         s.session().view.typed = "65";
       }},
      {"keypad, out of range",
       [](Stage& s) {
         s.open_sample();
         go(s, Sheet::link, Link::feedline, Panel::keypad);
         s.session().view.lever = L::antenna_feed_x_ohm;
         s.session().view.typed = "99999";
       }},
      {"cables",
       [](Stage& s) {
         s.open_sample();
         go(s, Sheet::link, Link::feedline, Panel::choices);
         s.session().view.lever = L::feedline_cable;
       }},
      {"check",
       [](Stage& s) {
         s.open_sample();
         go(s, Sheet::link, Link::feedline, Panel::check);
         s.session().view.check = find_check("feedline.roll_loss");
         s.session().view.check_given.assign(5, Value{});
         s.session().view.check_given[1] = 3.2;
       }},
      {"radio",
       [](Stage& s) {
         s.open_sample();
         go(s, Sheet::link, Link::radio);
       }},
      {"antenna",
       [](Stage& s) {
         s.open_sample();
         go(s, Sheet::link, Link::antenna);
       }},
      {"contacts",
       [](Stage& s) {
         s.open_sample();
         go(s, Sheet::link, Link::contacts);
       }},
      {"clock",
       [](Stage& s) {
         s.open_sample();
         go(s, Sheet::link, Link::clock);
       }},
      {"safety",
       [](Stage& s) {
         s.open_sample();
         go(s, Sheet::link, Link::safety);
       }},
      {"kit",
       [](Stage& s) {
         s.open_sample();
         go(s, Sheet::link, Link::kit);
       }},
      {"kit, empty", [](Stage& s) { go(s, Sheet::link, Link::kit); }},
      {"kit, adding an item",
       [](Stage& s) {
         s.open_sample();
         go(s, Sheet::link, Link::kit);
         s.session().view.unfolded = "kit:add";
       }},
      {"why kit holds",
       [](Stage& s) {
         s.open_sample();
         go(s, Sheet::link, Link::kit, Panel::why);
         s.session().view.why = R::kit_chance_pct;
       }},
      {"sky",
       [](Stage& s) {
         s.open_sample();
         go(s, Sheet::link, Link::sky);
       }},
      {"why runtime",
       [](Stage& s) {
         s.open_sample();
         go(s, Sheet::link, Link::battery, Panel::why);
         s.session().view.why = R::power_runtime_h;
       }},
      {"overview, battery fails",
       [](Stage& s) {
         s.open_sample();
         s.session().pin();
         s.session().set(L::battery_capacity_ah, 4.0);
       }},
      {"battery",
       [](Stage& s) {
         s.open_sample();
         go(s, Sheet::link, Link::battery);
       }},
      {"more",
       [](Stage& s) {
         s.open_sample();
         go(s, Sheet::more);
       }},
      {"my own things",
       [](Stage& s) {
         s.open_sample();
         s.session().keep_thing(OwnGroup::battery);
         s.session().keep_thing(OwnGroup::cable);
         s.session().drop_thing(1);
         go(s, Sheet::things);
         s.session().view.unfolded = "thing:0";
       }},
      {"outings",
       [](Stage& s) {
         s.open_sample();
         s.session().duplicate("outing");
         s.session().throw_away("outing-2");
         go(s, Sheet::outings);
         s.session().view.unfolded = "outing:more";
       }},
      {"a text refused",
       [](Stage& s) {
         s.open_sample();
         go(s, Sheet::link, Link::sky);
         s.settle();
         s.shell().act({"site.locator", platform::MirrorAction::Verb::commit, 0, "nowhere near a locator"});
       }},
      {"a page of words",
       [](Stage& s) {
         s.open_sample();
         go(s, Sheet::more);
         s.settle();
         s.tap("page:licences");
       }},
      {"pin choices",
       [](Stage& s) {
         s.open_sample();
         s.session().pin();
         go(s, Sheet::overview, Link::feedline, Panel::pin);
       }},
      {"not on the air yet",
       [](Stage& s) {
         s.open_sample();
         go(s, Sheet::on_air);
       }},
      {"on the air",
       [](Stage& s) {
         s.open_sample();
         s.session().go_on_air(machine().utc_s);
         for (int i = 0; i < 7; ++i) s.session().count_contact(machine().utc_s + 60 * i, 60 * i);
         machine().utc_s += 420;
         go(s, Sheet::on_air);
       }},
      {"on the air, many contacts, clock set back",
       [](Stage& s) {
         s.open_sample();
         s.session().go_on_air(machine().utc_s);
         for (int i = 0; i < 130; ++i) s.session().count_contact(machine().utc_s + 60 * i, 60 * i);
         go(s, Sheet::on_air);
       }},
      {"some I forgot",
       [](Stage& s) {
         s.open_sample();
         s.session().go_on_air(machine().utc_s);
         go(s, Sheet::on_air, Link::feedline, Panel::forgotten);
       }},
      {"after",
       [](Stage& s) {
         s.open_sample();
         s.session().go_on_air(machine().utc_s);
         for (int i = 0; i < 12; ++i) s.session().count_contact(machine().utc_s + 60 * i, 60 * i);
         s.session().leave_air(machine().utc_s + 3600);
         s.session().note_measured("feedline.measured_swr", 1.4, machine().utc_s);
         s.session().note_measured("power.supply_at_key_down_v", 11.9, machine().utc_s);
         s.session().view.adopted = {"pace.per_hour"};
         go(s, Sheet::after);
       }},
      {"after, nothing happened",
       [](Stage& s) {
         s.open_sample();
         go(s, Sheet::after);
       }},
      {"earlier outings, none",
       [](Stage& s) {
         s.open_sample();
         go(s, Sheet::history);
       }},
      {"earlier outings",
       [](Stage& s) {
         s.open_sample();
         std::vector<PastOuting> past;
         for (int i = 1; i <= 15; ++i)
           past.push_back({"Quillet Meadow",
                           "2026-05-0" + std::to_string(1 + i % 9),
                           double(4 + i % 7),
                           70.0 + i,
                           10,
                           12,
                           "dipole",
                           {},
                           1777600000.0 + 90000 * i,
                           40,
                           std::nullopt});
         past[3].left_pct = 31;
         past[9].left_pct = 52;
         s.session().add_past(past);
         s.session().drop_past(2);
         s.session().make_usual({{"clock.set_up_min", 14.0}});
         go(s, Sheet::history);
         s.session().view.unfolded = "past:13";
       }},
      {"field card",
       [](Stage& s) {
         s.open_sample();
         go(s, Sheet::card);
       }},
      {"clock, stints",
       [](Stage& s) {
         s.open_sample();
         s.session().set_stints({{.from_min = 1040, .on_air = false},
                                 {.from_min = 1060, .on_air = true, .set = {{L::radio_transmit_power_w, 10.0}}},
                                 {.from_min = 1100, .on_air = true}},
                                "stints");
         go(s, Sheet::link, Link::clock);
         s.session().view.unfolded = "stint:1";
       }},
      {"note",
       [](Stage& s) {
         s.session().notes.push_back("A damaged copy of the outing was set aside; the other copy is in use.");
       }},
  };
  return all;
}

struct Surface {
  float w, h;
  int text_pct;
};
constexpr Surface kSurfaces[] = {{1440, 900, 100}, {1024, 768, 100}, {820, 1180, 100}, {390, 844, 100},
                                 {844, 390, 100},  {1024, 768, 200}, {390, 844, 200}};

void set_screen(Stage& stage, const Screen& screen, const Surface& surface) {
  screen.open(stage);
  stage.session().settings.text_pct = surface.text_pct;
  stage.settle();
  stage.settle();
}

}  // namespace

TEST_CASE("what the hand can reach and what the mirror names are the same, once, and large enough") {
  int reached = 0;
  double least = 1e9;
  for (const Surface& surface : kSurfaces) {
    for (const Screen& screen : screens()) {
      Stage stage(surface.w, surface.h);
      set_screen(stage, screen, surface);
      const float text = stage.session().settings.text_pct == 200 ? std::min(2.0F, surface.w / 320) : 1.0F;
      INFO(screen.name << " at " << surface.w << "x" << surface.h << ", text " << surface.text_pct << " %");
      std::set<std::string> ids;
      for (const mirror::Node& node : stage.tree().nodes) {
        CHECK_MESSAGE(ids.insert(node.id).second, "twice in the mirror: " << node.id);
        if (!node.parent.empty())
          CHECK_MESSAGE(ids.count(node.parent) == 1, node.id << " before its container " << node.parent);
        if (mirror::is_interactive(node.role)) CHECK_MESSAGE(!node.name.empty(), node.id << " has no name");
        if (node.role == mirror::Role::slider)
          CHECK_MESSAGE(!node.value.empty(), node.id << " has no spoken value");
      }
      for (const parts::Target& target : stage.shell().targets()) {
        if (target.kind == parts::Target::Kind::scroll) continue;
        ++reached;
        const mirror::Node* node = stage.find(target.id);
        REQUIRE_MESSAGE(node != nullptr, "reachable but not in the mirror: " << target.id);
        CHECK_MESSAGE(mirror::is_interactive(node->role), target.id << " is not interactive in the mirror");
        CHECK_MESSAGE(std::abs(node->x - target.box.x * text) < 0.1F,
                      target.id << " stands elsewhere in the mirror");
        CHECK_MESSAGE(node->w / text >= 47.9F, target.id << " is " << node->w / text << " px wide");
        CHECK_MESSAGE(node->h / text >= 47.9F, target.id << " is " << node->h / text << " px high");
        CHECK_MESSAGE(node->x >= -0.5F, target.id << " leaves the surface on the left");
        CHECK_MESSAGE(node->x + node->w <= surface.w + 0.5F, target.id << " leaves the surface on the right");
        least = std::min(least, double(std::min(node->w, node->h) / text));
      }
    }
  }
  MESSAGE(reached << " targets looked at, smallest side " << least << " px");
}

TEST_CASE("an interactive record that is in sight can be reached") {
  int looked_at = 0;
  for (const Surface& surface : kSurfaces) {
    for (const Screen& screen : screens()) {
      Stage stage(surface.w, surface.h);
      set_screen(stage, screen, surface);
      const float text = stage.session().settings.text_pct == 200 ? std::min(2.0F, surface.w / 320) : 1.0F;
      INFO(screen.name << " at " << surface.w << "x" << surface.h);
      for (const mirror::Node& node : stage.tree().nodes) {
        if (!mirror::is_interactive(node.role) || node.disabled) continue;
        ++looked_at;
        bool reachable = false, inside_scroll = false;
        for (const parts::Target& target : stage.shell().targets()) {
          if (target.id == node.id) reachable = true;
          const look::Box& box = target.box;
          if (target.kind == parts::Target::Kind::scroll && node.y / text < box.bottom() - 1 &&
              (node.y + node.h) / text > box.y + 1 && node.x / text < box.right() &&
              (node.x + node.w) / text > box.x)
            inside_scroll = true;
        }
        CHECK_MESSAGE((reachable || !inside_scroll), node.id << " is in sight and cannot be reached");
      }
    }
  }
  MESSAGE(looked_at << " interactive records looked at");
}

TEST_CASE("no item is drawn past our own parts, and one that is would be found") {
  Stage stage(1024, 768);
  mirror::watch_stray_items();
  for (const Screen& screen : screens()) {
    stage.session().open(Outing{}, "a new outing");
    stage.session().view = View{};
    stage.settle();
    screen.open(stage);
    stage.settle();
  }
  CHECK_MESSAGE(mirror::stray_items().empty(),
                "first: " << (mirror::stray_items().empty() ? "" : mirror::stray_items().front()));
  ImGui::NewFrame();
  ImGui::Begin("Stray");
  ImGui::Button("A button without a record");
  ImGui::End();
  ImGui::Render();
  const auto& strays = mirror::stray_items();
  CHECK(std::find(strays.begin(), strays.end(), "A button without a record") != strays.end());
}

TEST_CASE("every text that is drawn has the contrast its theme promises") {
  for (const ThemeName name : {ThemeName::daylight, ThemeName::dusk, ThemeName::night}) {
    const double needed = name == ThemeName::night ? 4.5 : 7.0;
    double least = 21;
    std::string worst;
    int texts = 0;
    for (const Surface& surface : kSurfaces) {
      for (const Screen& screen : screens()) {
        Stage stage(surface.w, surface.h);
        stage.session().settings.theme = name;
        set_screen(stage, screen, surface);
        std::vector<look::TextRecord> drawn;
        stage.shell().record_texts(&drawn);
        stage.frame();
        stage.shell().record_texts(nullptr);
        REQUIRE(!drawn.empty());
        for (const look::TextRecord& record : drawn) {
          ++texts;
          const double ratio = look::contrast(record.colour, record.ground);
          if (ratio >= least) continue;
          least = ratio;
          worst = record.text + " on " + screen.name;
        }
      }
    }
    MESSAGE("theme " << int(name) << ": " << texts << " texts drawn, lowest contrast " << least << " (" << worst
                     << "), needed " << needed);
    CHECK(least >= needed);
  }
}

TEST_CASE("no text leaves the surface") {
  int texts = 0;
  for (const Surface& surface : kSurfaces) {
    for (const Screen& screen : screens()) {
      Stage stage(surface.w, surface.h);
      set_screen(stage, screen, surface);
      std::vector<look::TextRecord> drawn;
      stage.shell().record_texts(&drawn);
      stage.frame();
      stage.shell().record_texts(nullptr);
      INFO(screen.name << " at " << surface.w << "x" << surface.h << ", text " << surface.text_pct << " %");
      const float text = stage.session().settings.text_pct == 200 ? std::min(2.0F, surface.w / 320) : 1.0F;
      for (const look::TextRecord& record : drawn) {
        ++texts;
        CHECK_MESSAGE(record.rect.x >= -0.5F, "cut on the left: " << record.text);
        CHECK_MESSAGE(record.rect.right() * text <= surface.w + 0.5F, "cut on the right: " << record.text);
      }
    }
  }
  MESSAGE(texts << " texts looked at");
}
