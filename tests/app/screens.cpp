#include "tests/app/screens.h"

namespace gs::stage {

namespace {

void go(Stage& stage, Sheet sheet, Link link = Link::feedline, Panel panel = Panel::none) {
  View& view = stage.session().view;
  view.sheet = sheet;
  view.link = link;
  view.panel = panel;
}

const std::vector<L> kTurnLevers = {L::battery_capacity_ah, L::radio_transmit_power_w, L::lead_wire,
                                    L::radio_transmit_share_pct};

}  // namespace

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

}  // namespace gs::stage
