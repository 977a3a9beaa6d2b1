#include "app/shell.h"

#include <algorithm>
#include <cmath>
#include <utility>

#include "app/mirror/keys.h"
#include "app/sheets/sheets.h"
#include "app/store/journal.h"
#include "app/store/store.h"
#include "app/tally_journal.h"
#include "core/outing/archive.h"

namespace gs {
namespace {

constexpr int kSettleFrames = 2;  // after an event: one that answers it, one for what that answer moved
constexpr std::string_view kSettingsKey = "settings", kOpenKey = "open", kThingsKey = "things",
                           kPastKey = "history";  // records of the store
constexpr float kNarrowest_px = 180;              // logical width below which three links do not stand side by side

bool is_text_field(const mirror::Tree& tree, const std::string& id) {
  return std::any_of(tree.nodes.begin(), tree.nodes.end(),
                     [&](const mirror::Node& node) { return node.id == id && node.role == mirror::Role::textbox; });
}

}  // namespace

Shell::Shell() {
  session_.zone_on = platform::zone_on;
  store::Kept kept = store::load();
  session_.notes = std::move(kept.notes);
  for (auto& [key, text] : kept.records) {
    if (key == kSettingsKey) {
      LoadedSettings loaded = read_settings(text);
      if (loaded.refusal.empty()) session_.settings = loaded.settings;
    } else if (key == kOpenKey) {
      open_key_ = text;
    } else if (key == kThingsKey) {
      session_.load_things(text);
    } else if (key == kPastKey) {
      session_.load_past(text);
    } else {
      session_.shelf.found(key, std::move(text));
    }
  }
  session_.start_with(open_key_);
  // contacts that came after the last save
  Outing outing = session_.outing();
  bool played = false;
  for (const std::string& line : store::noted()) played = play(outing, line) || played;
  if (played) {
    session_.restore(std::move(outing), true);
    if (!is_on_air(session_.outing().happened)) session_.put_into_history();
  }
  kept_settings_ = session_.settings;
}

Shell::~Shell() = default;

void Shell::prepare() {
  const float wanted = platform::view().pixel_ratio * text_scale();
  if (std::abs(fonts_.scale - wanted) < 1e-4F) return;
  fonts_ = look::build_fonts(*ImGui::GetIO().Fonts, wanted);
  platform::rebuild_font_texture();
}

void Shell::frame() {
  const platform::View view = platform::view();
  const double now_s = platform::now_s();
  const float text = text_scale();
  session_.tick({platform::utc_now_s(), double(platform::today().utc_offset_min)});
  hand_.reduced_motion = view.reduced_motion;
  hand_.begin_frame(now_s);

  const float surface_w = (view.width - view.inset_left - view.inset_right) / text;
  const float surface_h = (view.height - view.inset_top - view.inset_bottom) / text;
  if (surface_w < 40 || surface_h < 40) return;  // no room for a single control
  const look::Box surface{view.inset_left / text, view.inset_top / text, surface_w, surface_h};
  ImDrawList& list = *ImGui::GetBackgroundDrawList();
  double wake_s = 0;
  // What a hand changes low on the sheet stands higher up too: such a frame is drawn a second time, so that no
  // figure lags.
  for (int pass = 0; pass < 2; ++pass) {
    look::Pen pen(list, fonts_, look::theme(session_.settings.theme));
    if (record_) {
      record_->clear();
      pen.record(record_);
    }
    parts::Ui ui(session_, pen, hand_, asked_, typing_, surface, now_s);
    draw(ui);
    asked_ = {};
    typing_.end_frame();
    if (!ui.keyboard_to.empty()) give_keyboard(ui.keyboard_to);
    wake_s = ui.wake_s;
    if (pass == 0 && wake_s != 0 && wake_s <= now_s) {
      hand_.again();
      list._ResetForNewFrame();
      list.PushTextureID(ImGui::GetIO().Fonts->TexID);
      list.PushClipRectFullScreen();
      continue;
    }
    publish(ui);
    break;
  }
  ImGui::GetStyle().Colors[ImGuiCol_WindowBg] =
      ImGui::ColorConvertU32ToFloat4(look::theme(session_.settings.theme).paper);
  hand_.end_frame();
  const bool counting = session_.view.sheet == Sheet::on_air && session_.phase() == Phase::on_air;
  if (std::exchange(awake_, counting) != counting) platform::keep_awake(counting);
  keep();
  if (hand_.moving() || hand_.pressing()) wake_s = now_s;
  if (wake_s != 0) wake_s <= now_s ? platform::wake(1) : platform::wake_in(wake_s - now_s);
}

void Shell::draw(parts::Ui& ui) {
  ui.focus = focus_;
  ui.show_focus = focus_ != shown_focus_;
  ui.tree.title = session_.outing().name.empty() ? "Groundsheet" : session_.outing().name + " \u00B7 Groundsheet";
  sheets::header(ui);
  draw_notes(ui);
  draw_sheet(ui);
}

float Shell::text_scale() const {
  return std::max(1.0F, std::min(float(session_.settings.text_pct) / 100, platform::view().width / kNarrowest_px));
}

void Shell::draw_sheet(parts::Ui& ui) {
  switch (session_.view.sheet) {
    case Sheet::overview:
      return sheets::overview(ui);
    case Sheet::link:
      return sheets::link(ui);
    case Sheet::more:
      return sheets::more(ui);
    case Sheet::text:
      return sheets::text(ui);
    case Sheet::outings:
      return sheets::outings(ui);
    case Sheet::things:
      return sheets::things(ui);
    case Sheet::history:
      return sheets::history(ui);
    case Sheet::after:
      return sheets::after(ui);
    case Sheet::card:
      return sheets::card(ui);
    case Sheet::on_air:
      return sheets::on_air(ui);
  }
}

void Shell::draw_notes(parts::Ui& ui) {
  const float top = ui.y;
  std::string text;
  if (store_failed_) {
    text = "Not saved on this device. Keep this page open, or save a copy as a file.";
  } else if (session_.held()) {
    text =
        "This outing was kept by a newer version and is read as far as known. Changes are not kept unless you keep "
        "them over it.";
  } else if (!session_.notes.empty()) {
    text = session_.notes.back();
  } else if (update_waits_) {
    text = "A newer build is ready.";
  }
  if (text.empty()) return;
  const float margin = ui.margin(), width = ui.surface.w - 2 * margin;
  const bool offers_keeping = session_.held() && !store_failed_;
  const bool offers_update = update_waits_ && session_.notes.empty() && !store_failed_ && !session_.held();
  const float hands_w = offers_update || offers_keeping ? 160 : 48;
  const float text_w = width - hands_w - 52;
  const std::size_t lines = ui.pen.lines(text, text_w, look::Face::regular, look::type::kLabel).size();
  const look::Box box{ui.surface.x + margin, top + 4, width, std::max(56.0F, float(lines) * 21.2F + 20)};
  ui.pen.fill(box, ui.theme.fold, look::radius::kPanel);
  {
    const look::Ground ground(ui.pen, ui.theme.fold);
    ui.pen.sign(store_failed_ ? look::Sign::fails : look::Sign::unknown, {box.x + 24, box.mid_y()},
                look::sign::kList);
    ui.pen.paragraph(box.x + 44, box.mid_y() - float(lines - 1) * 10.6F + 6, text_w, text, look::Face::regular,
                     look::type::kLabel, ui.theme.ink);
  }
  ui.node(mirror::Role::status, "note", text, box).live = true;
  if (offers_keeping) {
    if (ui.button_in({box.right() - 156, box.mid_y() - 24, 148, 48}, "keep", "Keep mine", parts::Weight::plain,
                     look::Icon::count, look::type::kLabel)) {
      session_.keep_over();
      ui.wake_at(ui.now_s);
    }
  } else if (offers_update) {
    if (ui.button_in({box.right() - 156, box.mid_y() - 24, 148, 48}, "update", "Start it", parts::Weight::main,
                     look::Icon::count, look::type::kLabel))
      platform::take_update();
  } else if (!store_failed_) {
    if (ui.icon_button({box.right() - 52, box.mid_y() - 24, 48, 48}, "note:close", "Close this note",
                       look::Icon::close, ui.theme.ink)) {
      session_.notes.pop_back();
      ui.wake_at(ui.now_s);
    }
  }
  ui.y = box.bottom() + 4;
}

/// A panel that opens takes the keyboard with it, and gives it back when it closes. A keypad that opens with a
/// figure begun gives it to the key that sets it.
void Shell::move_focus(const mirror::Tree& tree) {
  const View& view = session_.view;
  const bool types = view.panel == Panel::keypad || (view.panel == Panel::check && view.input);
  const Opened opened{view.panel, types};
  if (opened == std::exchange(opened_, opened)) return;
  if (view.panel == Panel::none || (view.panel == Panel::check && !types && !type_opener_.empty())) {
    std::string& back = view.panel == Panel::none ? opener_ : type_opener_;
    if (!back.empty()) give_keyboard(std::exchange(back, {}));
    type_opener_.clear();
    return;
  }
  if (focus_.empty()) return;
  const std::string begun = types && !view.typed.empty() ? "keypad:set" : "";
  for (const char* group : {"keypad", "why", "check", "choices", "pin:choices"}) {
    bool inside = false;
    for (const mirror::Node& node : tree.nodes) {
      inside = inside || node.id == group || node.id == std::string(group) + ":title";
      if (!inside || !mirror::is_interactive(node.role) || (!begun.empty() && node.id != begun)) continue;
      (view.panel == Panel::check && types ? type_opener_ : opener_) = focus_;
      give_keyboard(node.id);
      platform::wake(kSettleFrames);
      return;
    }
  }
}

void Shell::publish(parts::Ui& ui) {
  const float text = text_scale();
  move_focus(ui.tree);
  const bool focus_there = std::any_of(ui.tree.nodes.begin(), ui.tree.nodes.end(),
                                       [&](const mirror::Node& node) { return node.id == focus_; });
  if (!focus_there) give_keyboard({});
  if (!typing_.has(focus_) && is_text_field(ui.tree, focus_)) typing_.give(focus_);  // a panel that opened with one
  ui.tree.focus = focus_;
  // from then on a hand may scroll it out of sight; a key brings it back
  if (ui.focus_in_sight && ui.focus == focus_) shown_focus_ = focus_;
  const look::Theme& theme = look::theme(session_.settings.theme);
  ui.tree.skin = {theme.ink, theme.paper, theme.ink, look::type::kBody * text};
  for (mirror::Node& node : ui.tree.nodes) {
    node.x *= text;
    node.y *= text;
    node.w *= text;
    node.h *= text;
    node.cut_top *= text;
    node.cut_bottom *= text;
  }
  if (ui.tree == tree_) return;
  tree_ = std::move(ui.tree);
  platform::mirror(mirror::to_json(tree_));
}

void Shell::keep() {
  for (const std::string& line : session_.take_noted()) store::note(line);
  if (!session_.held()) session_.put_away();
  for (const RecordWrite& write : session_.shelf.take_writes())
    write.text ? store::save(write.key, *write.text) : store::remove(write.key);
  if (session_.take_things_unsaved()) store::save(kThingsKey, write_things(session_.things()));
  if (session_.take_past_unsaved()) store::save(kPastKey, write_history(session_.past(), session_.past_kept()));
  if (session_.key() != open_key_ && session_.shelf.find(session_.key()))
    store::save(kOpenKey, open_key_ = session_.key());
  if (!(session_.settings == kept_settings_)) {
    kept_settings_ = session_.settings;
    store::save(kSettingsKey, write_settings(kept_settings_));
    platform::wake(kSettleFrames);
  }
}

void Shell::pointer(const platform::Pointer& event) {
  const float text = text_scale();
  if (event.kind == platform::PointerKind::move && !hand_.pressing()) return;  // nothing answers to hovering
  if (event.kind == platform::PointerKind::down && !focus_.empty()) {
    const float x = event.x / text, y = event.y / text;
    bool into_field = false;  // a press into the field that has the keyboard leaves it there
    for (const parts::Target& target : hand_.targets())
      into_field = into_field || (typing_.has(target.id) && target.box.holds(x, y));
    if (!into_field) give_keyboard({});
  }
  hand_.pointer(event, event.x / text, event.y / text, platform::now_s());
  platform::wake(kSettleFrames);
}

void Shell::wheel(float x, float y, float, float dy) {
  const float text = text_scale();
  hand_.wheel(x / text, y / text, dy / text);
  platform::wake(1);
}

/// The one place where the keyboard goes from one control to another: what was typed in a text field counts then.
void Shell::give_keyboard(std::string id) {
  typing_.give(is_text_field(tree_, id) ? id : std::string{});
  focus_ = std::move(id);
}

void Shell::key(const platform::KeyPress& press) {
  shown_focus_.clear();
  const bool counting = session_.view.sheet == Sheet::on_air && session_.phase() == Phase::on_air;
  if (typing_.has(focus_) && typing_.key(press)) {
    // it went into the text field
  } else if (press.key == platform::Key::undo) {
    if (!counting) session_.undo();
  } else if (press.key == platform::Key::redo) {
    if (!counting) session_.redo();
  } else if (press.key == platform::Key::escape) {
    if (session_.view.panel == Panel::check && session_.view.input) {
      session_.view.input.reset();
    } else if (session_.view.panel != Panel::none) {
      session_.view.panel = Panel::none;
    } else {
      session_.view.unfolded.clear();
    }
  } else {
    const mirror::KeyEffect effect = mirror::effect_of(press, tree_, focus_);
    if (effect.focus) give_keyboard(*effect.focus);
    if (!effect.press.empty()) hand_.press(effect.press, platform::now_s());
    if (effect.steps != 0) asked_.steps[focus_] += effect.steps;
    if (effect.set) asked_.set[focus_] = *effect.set;
    if (!effect.typed.empty()) asked_.typed[focus_] += effect.typed;
  }
  platform::wake(kSettleFrames);
}

void Shell::act(const platform::MirrorAction& action) {
  switch (action.verb) {
    case platform::MirrorAction::Verb::press:
      hand_.press(action.id, platform::now_s());
      break;
    case platform::MirrorAction::Verb::set:
      asked_.set[action.id] = action.number;
      break;
    case platform::MirrorAction::Verb::focus:
      give_keyboard(action.id);
      break;
    case platform::MirrorAction::Verb::blur:
      if (focus_ == action.id) give_keyboard({});
      break;
    case platform::MirrorAction::Verb::type:
      typing_.typed(action.id, action.text);
      break;
    case platform::MirrorAction::Verb::commit:
      typing_.commit(action.id, action.text);
      break;
    case platform::MirrorAction::Verb::cancel:
      typing_.cancel(action.id);
      break;
  }
  platform::wake(kSettleFrames);
}

void Shell::view_changed() {
  shown_focus_.clear();  // a keyboard that slides up may cover it
  platform::wake(kSettleFrames);
}

void Shell::stored(bool ok) {
  if (ok && !is_on_air(session_.outing().happened)) store::forget_noted();
  if (store_failed_ == !ok) return;
  store_failed_ = !ok;
  platform::wake(kSettleFrames);
}

void Shell::kept_elsewhere(std::string_view key, std::string_view text, bool refused) {
  if (key == kSettingsKey) {
    LoadedSettings loaded = read_settings(text);
    if (loaded.refusal.empty()) session_.settings = kept_settings_ = loaded.settings;
  } else if (key == kOpenKey) {
    // each window has its own outing open
  } else if (key == kThingsKey) {
    session_.follow_things(text, refused);
  } else if (key == kPastKey) {
    session_.follow_past(text, refused);
  } else if (!text.empty()) {
    session_.follow(std::string(key), std::string(text), refused);
  } else if (key != session_.key()) {
    session_.shelf.lost(key);  // the open one stays open, and is kept again once it changes
  }
  platform::wake(kSettleFrames);
}

void Shell::file_picked(std::string_view name, std::string_view text) {
  const std::string file(name.substr(0, 80));
  if (const LoadedHistory history = read_history(text); history.refusal.empty()) {
    const std::size_t added = session_.add_past(history.outings);
    session_.notes.push_back(file + ": " + std::to_string(added) + (added == 1 ? " outing was" : " outings were") +
                             " added to the history.");
    return platform::wake(kSettleFrames);
  }
  if (const LoadedThings own = read_things(text); own.refusal.empty()) {
    const std::size_t before = session_.notes.size(), added = session_.add_things(own.things);
    if (session_.notes.size() == before) {
      std::string said = file + ": " + std::to_string(added) + " of " + std::to_string(own.things.size()) +
                         (own.things.size() == 1 ? " thing was" : " things were") + " added to your own.";
      if (!own.notes.empty()) said += " " + own.notes.front() + ".";
      session_.notes.push_back(said);
    }
    return platform::wake(kSettleFrames);
  }
  LoadedOuting loaded = read_outing(text);
  if (!loaded.refusal.empty()) {
    session_.notes.push_back(file + " was not opened: " + loaded.refusal);
  } else {
    session_.open(std::move(loaded.outing), "opening " + file);
    if (loaded.newer) loaded.notes.insert(loaded.notes.begin(), "made by a newer version, read as far as known");
    session_.view = View{};
    if (!loaded.notes.empty()) {
      std::string all = file + ": ";
      for (std::size_t i = 0; i < std::min<std::size_t>(3, loaded.notes.size()); ++i)
        all += (i ? "; " : "") + loaded.notes[i];
      if (loaded.notes.size() > 3) all += "; and " + std::to_string(loaded.notes.size() - 3) + " more";
      session_.notes.push_back(all);
    }
  }
  platform::wake(kSettleFrames);
}

void Shell::update_waits() {
  update_waits_ = true;
  platform::wake(kSettleFrames);
}

}  // namespace gs
