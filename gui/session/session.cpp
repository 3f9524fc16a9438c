#include "session/session.h"

#include "editing/edits.h"
#include "model/validate.h"
#include "session/governing.h"
#include "solving/solve_service.h"

#include <algorithm>
#include <utility>

namespace toehold::session {
namespace {

/// Cut after a whole word, for a menu.
std::string shortened(const std::string& text, std::size_t longest) {
    if (text.size() <= longest) return text.substr(0, text.find_last_not_of('.') + 1);
    return text.substr(0, text.find_last_of(' ', longest)) + " ...";
}

}  // namespace

Session::Session(const catalog::Catalog& catalog, model::BaseDetail detail,
                 std::function<void(solving::Request)> submit, std::shared_ptr<const format::Catalogue> translations)
    : catalog_(catalog),
      submit_(std::move(submit)),
      translations_(std::move(translations)),
      history_(std::move(detail)) {
    detail_has_changed(false);
}

const model::BaseDetail& Session::detail() const { return history_.now(); }
const catalog::Catalog& Session::catalog() const { return catalog_; }
const editing::History& Session::history() const { return history_; }

void Session::detail_has_changed(bool moving) {
    ++revision_;
    moving_ = moving;
    message_ = {};
    resolved_.reset();
    problems_ = model::validate(detail());
    if (problems_.empty()) {
        catalog::Resolution resolution = catalog::resolve(detail(), catalog_);
        problems_ = std::move(resolution.problems);
        if (resolution.resolved) resolved_ = std::make_shared<const catalog::Resolved>(std::move(*resolution.resolved));
    }
    request();
    notify(Change::detail);
    const std::vector<model::PartId> there = model::parts(detail());
    if (std::erase_if(selection_, [&there](const model::PartId& part) { return !model::contains(there, part); }) > 0)
        notify(Change::selection);
}

void Session::change(const format::Phrase& step, model::BaseDetail next, const std::string& merge_key, bool moving) {
    if (next == detail()) return;
    history_.apply(step, std::move(next), merge_key);
    detail_has_changed(moving);
}

bool Session::apply(const editing::Edit& edit, const std::string& merge_key) {
    if (edit.step.empty()) {
        say(edit.refusal);
        return false;
    }
    change(edit.step, edit.detail, merge_key);
    if (!edit.selected.empty()) select(edit.selected);
    return true;
}

void Session::rest() {
    history_.seal();
    if (!std::exchange(moving_, false)) return;
    request();
    notify(Change::results);  // what was allowed to lag behind the hand no longer is
}

void Session::undo() {
    if (!history_.can_undo()) return;
    history_.undo();
    detail_has_changed(false);
}

void Session::redo() {
    if (!history_.can_redo()) return;
    history_.redo();
    detail_has_changed(false);
}

void Session::mark_saved() {
    history_.mark_saved();
    notify(Change::file);
}

void Session::replace(model::BaseDetail detail) {
    history_ = editing::History(std::move(detail));
    first_revision_ = revision_ + 1;
    selection_.clear();
    quick_.reset();
    quick_resolved_.reset();
    quick_revision_ = 0;
    review_.reset();
    review_revision_ = 0;
    review_is_complete_ = false;
    failure_ = {};
    detail_has_changed(false);
    notify(Change::selection);
    notify(Change::file);
}

const std::vector<model::PartId>& Session::selection() const { return selection_; }

void Session::select(std::vector<model::PartId> parts) {
    std::vector<model::PartId> once;
    for (model::PartId& part : parts) {
        if (!model::contains(once, part)) once.push_back(std::move(part));
    }
    if (once == selection_) return;
    selection_ = std::move(once);
    notify(Change::selection);
}

void Session::toggle(const model::PartId& part) {
    if (std::erase(selection_, part) == 0) selection_.push_back(part);
    notify(Change::selection);
}

const Display& Session::display() const { return display_; }

void Session::show(const Display& display) {
    if (display == display_) return;
    const bool turned = display.direction_rad != display_.direction_rad;
    display_ = display;
    if (turned) request();
    notify(Change::display);
}

void Session::turn_push(std::optional<double> direction_rad) {
    Display turned = display_;
    turned.direction_rad = direction_rad;
    show(turned);
}

void Session::apply_remedy(const review::Remedy& remedy) {
    if (current_review() == nullptr) {
        say(format::phrase("The detail has changed since: wait for its review."));
        return;
    }
    constexpr std::size_t longest = 40;
    change(format::phrase("Apply remedy: {}", shortened(format::text(remedy.text, locale()), longest)), remedy.detail);
}

const format::Phrase& Session::message() const { return message_; }

void Session::say(format::Phrase message) {
    message_ = std::move(message);
    notify(Change::display);
}

int Session::listen(std::function<void(Change)> listener) {
    listeners_.emplace_back(next_listener_, std::move(listener));
    return next_listener_++;
}

void Session::stop_listening(int number) {
    std::erase_if(listeners_, [number](const auto& listener) { return listener.first == number; });
}

void Session::notify(Change change) {
    std::vector<int> numbers;
    for (const auto& [number, listener] : listeners_) numbers.push_back(number);
    // One that is told may stop others, or itself, or bring new ones.
    for (const int number : numbers) {
        const auto place = std::find_if(listeners_.begin(), listeners_.end(),
                                        [number](const auto& listener) { return listener.first == number; });
        if (place == listeners_.end()) continue;
        const std::function<void(Change)> listener = place->second;
        listener(change);
    }
}

}  // namespace toehold::session
