#include "window/sheet/tips.h"

#include "catalog/resolve.h"
#include "drawing/marked_parts.h"
#include "editing/sheet_words.h"
#include "format/figures.h"
#include "format/phrase.h"
#include "model/member.h"
#include "review/review.h"
#include "window/sheet/readout.h"
#include "window/sheet/title_block.h"
#include "wording/status.h"

#include <algorithm>
#include <utility>

namespace toehold::window {

using format::phrase;
using format::Quantity;
using model::PartKind;

namespace {

const drawing::AnchorMark* mark_of(const drawing::Overlay& overlay, const std::string& id) {
    const auto found = std::find_if(overlay.anchors.begin(), overlay.anchors.end(),
                                    [&id](const drawing::AnchorMark& mark) { return mark.part.id == id; });
    return found == overlay.anchors.end() ? nullptr : &*found;
}

const catalog::Anchor* fastener(const session::Session& session, const std::string& id) {
    if (!session.resolved()) return nullptr;
    const auto& anchors = session.resolved()->anchors;
    const auto found =
        std::find_if(anchors.begin(), anchors.end(), [&id](const catalog::Anchor& anchor) { return anchor.id == id; });
    return found == anchors.end() ? nullptr : &*found;
}

std::string length(double value_in, const session::Session& session) {
    return readout(value_in, session.display().system);
}

/// What is said of a part, line by line, in the reader's language and units.
class Lines {
  public:
    explicit Lines(format::Locale locale) : locale_(std::move(locale)) {}
    void add(const format::Phrase& line) {
        if (!text_.empty()) text_ += "\n";
        text_ += format::text(line, locale_);
    }
    [[nodiscard]] const std::string& text() const { return text_; }

  private:
    format::Locale locale_;
    std::string text_;
};

Quantity force(double lb) { return {lb, "lb"}; }

void add_status(Lines& lines, const format::Phrase& check, const std::optional<double>& ratio, checks::Status status,
                const format::Locale& locale) {
    const std::string figure = ratio ? format::ratio_text(*ratio) : "-";
    const std::string word = format::text(wording::word(status), locale);
    lines.add(check.empty() ? phrase("D/C {} {}", figure, word) : phrase("D/C {} {}: {}", figure, word, check));
}

void add_anchor(Lines& lines, const std::string& id, const session::Session& session, const drawing::Overlay& overlay) {
    if (const auto* anchor = fastener(session, id)) lines.add(format::verbatim(anchor->name));
    const auto* mark = mark_of(overlay, id);
    if (!mark) {
        lines.add(phrase("no results yet"));
        return;
    }
    if (mark->tension_lb)
        lines.add(
            phrase("tension {}, largest of all pushes {}", force(*mark->tension_lb), force(mark->largest_tension_lb)));
    else
        lines.add(phrase("tension by hand not known, largest of all pushes {}", force(mark->largest_tension_lb)));
    if (mark->capacity_lb) lines.add(phrase("tension capacity {}", force(*mark->capacity_lb)));
    lines.add(phrase("shear {}", force(mark->shear_lb)));
    if (mark->status) add_status(lines, mark->worst_check, mark->ratio, *mark->status, session.locale());
}

void add_member(Lines& lines, const std::string& id, const session::Session& session) {
    const auto& framing = session.detail().framing;
    const auto index = model::find_member(framing, id);
    if (!index) return;
    const auto member = model::member(framing, *index);
    const auto width = length(member.width_in, session), depth = length(member.depth_in, session);
    lines.add(member.length_stated ? phrase("{} x {}, {} long", width, depth, length(model::length_in(member), session))
                                   : phrase("{} x {}", width, depth));
}

/// The first result that speaks of a part: they stand worst first.
const checks::CheckResult* worst_of(const model::PartId& part, const session::Session& session) {
    if (!session.review()) return nullptr;
    for (const auto& result : session.review()->checks) {
        if (model::contains(drawing::marked_parts(result.part, session.detail()), part)) return &result;
    }
    return nullptr;
}

void add_size(Lines& lines, const model::PartId& part, const session::Session& session) {
    const auto& detail = session.detail();
    if (part == model::main_part(detail)) lines.add(model::main_part_words(detail));
    const model::Decking* const boards = model::deck_boards(detail);
    if (part.kind == PartKind::decking && boards != nullptr)
        lines.add(phrase("{} thick", length(boards->thickness_in, session)));
    if (part.kind == PartKind::guard)
        lines.add(phrase("{} above the walking surface", length(detail.guard.height_in, session)));
    if (part.kind == PartKind::block || part.kind == PartKind::joist || part.kind == PartKind::rim)
        add_member(lines, part.id, session);
}

void add_push(Lines& lines, const drawing::Overlay& overlay) {
    if (!overlay.push) return;
    const auto words = push_words(*overlay.push);
    lines.add(overlay.push->governing ? phrase("{}, governing", words) : words);
    lines.add(phrase("Drag to turn it. Double-click for the governing push."));
}

/// As it begins a line.
format::Phrase name_of(const model::PartId& part) {
    switch (part.kind) {
        case PartKind::anchor:
            return phrase("Anchor {}", part.id);
        case PartKind::block:
            return phrase("Block {}", part.id);
        case PartKind::joist:
            return phrase("Joist {}", part.id);
        case PartKind::rim:
            return phrase("Rim joist {}", part.id);
        case PartKind::ledger:
            return phrase("Ledger {}", part.id);
        case PartKind::beam:
            return phrase("Beam {}", part.id);
        case PartKind::shim:
            return phrase("Shim {}", part.id);
        case PartKind::plate:
            return phrase("Base plate");
        case PartKind::tie:
            return phrase("Tie {}", part.id);
        case PartKind::post:
            return phrase("Post");
        case PartKind::weld:
            return phrase("Post weld");
        case PartKind::guard:
            return phrase("Guard");
        case PartKind::push:
            return phrase("Push");
        case PartKind::decking:
            return phrase("Decking");
        default:
            return model::part_name(part);
    }
}

}  // namespace

std::string part_name(const model::PartId& part, const format::Locale& locale) {
    return format::text(name_of(part), locale);
}

std::string tip(const model::PartId& part, const session::Session& session, const drawing::Overlay& overlay) {
    if (part.kind == PartKind::none) return {};
    const auto locale = session.locale();
    Lines lines(locale);
    const bool plate = part.kind == PartKind::plate;
    lines.add(plate ? editing::sheet_words(session.detail()).plate_name : name_of(part));
    if (part.kind == PartKind::push) {
        add_push(lines, overlay);
    } else if (part.kind == PartKind::anchor) {
        add_anchor(lines, part.id, session, overlay);
    } else {
        add_size(lines, part, session);
        if (const auto* worst = worst_of(part, session))
            add_status(lines, worst->title, worst->ratio, worst->status, locale);
    }
    if (session.freshness() == session::Freshness::stale) lines.add(phrase("out of date: solving"));
    return lines.text();
}

}  // namespace toehold::window
