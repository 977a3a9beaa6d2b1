// The site from above, to scale: what is roped off, what hangs overhead, where an evaluation is owed, who stands
// where.
#include <algorithm>
#include <cmath>

#include "app/parts/to_scale.h"
#include "app/parts/ui.h"
#include "core/outing/exposure_zones.h"

namespace gs::parts {

namespace {

constexpr double kPathBeyond_m = 1.5;  // where nobody paced a distance, people are drawn so far outside the zones

struct Reach {
  double left_m = 0, right_m = 0;
};

Reach reach_of(const std::vector<WirePart>& parts) {
  Reach reach;
  for (const WirePart& part : parts) {
    reach.left_m = std::min({reach.left_m, part.from_m, part.to_m});
    reach.right_m = std::max({reach.right_m, part.from_m, part.to_m});
  }
  return reach;
}

std::string metres(const Ui& ui, double m) { return say_quantity(m, Unit::metre, 1, ui.session.style()); }

void add_zones(const Ui& ui, const std::vector<WirePart>& parts, double public_m, Scene& scene, std::string& told) {
  const Reach reach = reach_of(parts);
  const Metres a{reach.left_m, 0}, b{reach.right_m, 0};
  const Outlook& out = ui.session.outlook();
  scene.zones.push_back({SceneZone::Kind::owed, a, b, out[R::safety_owed_within_m].value,
                         "evaluation owed within " + metres(ui, out[R::safety_owed_within_m].value)});
  if (const Outlook* pinned = ui.session.pinned_outlook();
      pinned && (*pinned)[R::safety_public_m].state != State::unknown)
    scene.zones.push_back({SceneZone::Kind::pinned, a, b, (*pinned)[R::safety_public_m].value,
                           "pinned " + metres(ui, (*pinned)[R::safety_public_m].value)});
  const std::vector<GroundZone> zones = reach_zones(parts, public_m);
  const double free_m = free_overhead_m(parts, public_m);
  scene.zones.push_back({SceneZone::Kind::overhead, a, b, public_m,
                         zones.empty() ? metres(ui, free_m) + " free overhead, walk under" : std::string{}});
  bool first = true;
  for (const GroundZone& zone : zones) {
    scene.zones.push_back({SceneZone::Kind::reach,
                           {zone.from_m, 0},
                           {zone.to_m, 0},
                           zone.radius_m,
                           first ? "rope off " + metres(ui, public_m) : std::string{}});
    first = false;
  }
  told = zones.empty() ? "Nobody on the ground comes within " + metres(ui, public_m) + " of the antenna"
                       : "Rope off " + metres(ui, public_m) + " round what hangs low";
}

void add_antenna(const std::vector<WirePart>& parts, double feed_x, double operator_m, Scene& scene) {
  using Thing = SceneThing::Kind;
  const Reach reach = reach_of(parts);
  if (reach.right_m > reach.left_m) {
    scene.lines.push_back({{{reach.left_m, 0}, {reach.right_m, 0}}, Ink::wire, {}});
    scene.things.push_back({Thing::support, {reach.left_m, 0}, 0, {}});
    scene.things.push_back({Thing::support, {reach.right_m, 0}, 0, {}});
  }
  scene.things.push_back({Thing::feed_point, {feed_x, 0}, 0, {}});
  const Metres table{feed_x + 1.5, -(operator_m + 1.2)};
  scene.lines.push_back({{{feed_x, 0}, table}, Ink::feed, {}});
  scene.things.push_back({Thing::table, table, 0, {}});
  scene.things.push_back({Thing::person, {table.x + 1.2, table.y - 0.4}, 0, "operator"});
}

}  // namespace

void Ui::safety_plan() {
  const Plan& plan = session.plan();
  const Outlook& out = session.outlook();
  const std::vector<WirePart> parts = wire_parts(plan);
  const double public_m = out[R::safety_public_m].value, operator_m = out[R::safety_operator_m].value;
  if (parts.empty() || !std::isfinite(public_m)) {
    paragraph(parts.empty() ? "The plan from above needs the antenna's kind, frequency and apex height."
                            : "The plan from above needs " +
                                  reason(plan, R::safety_public_m, out[R::safety_public_m], session.style()) + ".",
              "safety:plan", theme.ink2);
    return;
  }
  Scene scene;
  scene.id = "safety:plan";
  scene.name = "The site from above";
  scene.plan = true;
  std::string told;
  add_zones(*this, parts, public_m, scene, told);
  add_antenna(parts, fed_at_m(plan), operator_m, scene);
  const bool paced = plan.has(L::safety_people_m);
  const double people_m =
      paced ? plan[L::safety_people_m] : std::max(public_m, out[R::safety_owed_within_m].value) + kPathBeyond_m;
  // beyond the left end and half a person down, so that the figures lie beside what they are measured from
  const double end_x = reach_of(parts).left_m, people_x = end_x - people_m, people_y = -kPerson_m / 2;
  scene.things.push_back(
      {SceneThing::Kind::person, {people_x, people_y}, 0, paced ? "nearest people" : std::string{}});
  scene.things.push_back({SceneThing::Kind::child, {people_x - 1.2, people_y}, 0, {}});
  if (paced) scene.dimensions.push_back({{people_x, 0}, {end_x, 0}, metres(*this, people_m), 0});
  scene.sentence = told + ". Operator " + metres(*this, operator_m) + ", an evaluation is owed within " +
                   metres(*this, out[R::safety_owed_within_m].value) +
                   (paced ? ", nearest people at " + metres(*this, people_m) : std::string{}) + ".";
  to_scale(scene, phone() ? 300.0F : 360.0F);
  if (operator_m <= public_m) return;
  gap();
  paragraph(
      "The operator's distance is the larger here: below 3 MHz the operator's limit is less than five times the "
      "public's, and all sending of the public's half hour may fall into the operator's six minutes.",
      "safety:operator", theme.ink);
}

}  // namespace gs::parts
