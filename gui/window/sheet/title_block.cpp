#include "window/sheet/title_block.h"

#include "editing/sheet_words.h"
#include "format/figures.h"
#include "window/sheet/lettering.h"
#include "window/text.h"

#include <wx/intl.h>
#include <wx/string.h>

#include <array>
#include <cmath>

namespace toehold::window {

using namespace drawing;

namespace {

wxString state_words(const session::Session& session) {
    switch (session.freshness()) {
        case session::Freshness::none:
            return session.problems().empty() ? _("not solved yet") : _("cannot be solved");
        case session::Freshness::stale:
            return _("out of date, solving");
        case session::Freshness::quick:
            return _("checks solving");
        case session::Freshness::current:
            return _("up to date");
    }
    return {};
}

struct Entry {
    wxString label;
    std::string words;
    double share;  ///< of the block's width
};

}  // namespace

format::Phrase push_words(const PushShown& push) {
    double degrees = std::round(format::degrees(push.direction_rad) * 10) / 10;
    degrees -= 360 * std::floor(degrees / 360);
    return format::phrase("{} toward {}°", format::Quantity{push.push_lb, "lb"}, format::degrees_text(degrees));
}

TitleWords title_words(const session::Session& session, const Overlay& overlay) {
    TitleWords words;
    words.name = session.detail().name;
    const auto method = editing::method_words(session.detail(), session.display().method);
    words.method = format::text(method.titled, session.locale());
    words.push = overlay.push ? format::text(push_words(*overlay.push), session.locale()) : utf8(_("none"));
    words.governing = overlay.push && overlay.push->governing;
    words.state = utf8(state_words(session));
    return words;
}

Scene title_block(const TitleWords& words, double width, double height) {
    constexpr double left = 2.0;
    Scene scene;
    scene.name = "Title block";
    scene.items.emplace_back(frame({{0, 0}, {width, height}}, Pen::outline, Fill::paper));
    const double middle = height * 0.52;
    auto name = letters({left, middle + (height - middle) * 0.3},
                        fitted(words.name, TextSize::normal, (width - 2 * left) * 0.93), TextSize::normal);
    name.bold = true;
    scene.items.emplace_back(name);
    scene.items.emplace_back(rule({0, middle}, {width, middle}, Pen::thin));
    const std::array entries{Entry{_("METHOD"), words.method, 0.31},
                             Entry{words.governing ? _("PUSH SHOWN, GOVERNING") : _("PUSH SHOWN"), words.push, 0.41},
                             Entry{_("STATE"), words.state, 0.28}};
    double at = 0.0;
    for (const auto& entry : entries) {
        const double room = entry.share * width;
        if (at > 0) scene.items.emplace_back(rule({at, 0}, {at, middle}, Pen::thin));
        scene.items.emplace_back(letters({at + left, middle * 0.64},
                                         fitted(utf8(entry.label), TextSize::fine, room - left), TextSize::fine));
        scene.items.emplace_back(letters({at + left, middle * 0.16},
                                         fitted(entry.words, TextSize::small, room - 1.5 * left), TextSize::small));
        at += room;
    }
    return scene;
}

}  // namespace toehold::window
