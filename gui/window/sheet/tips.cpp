#include "window/sheet/tips.h"

#include "drawing/parts.h"
#include "format/figures.h"
#include "model/member.h"
#include "window/sheet/readout.h"
#include "window/sheet/title_block.h"
#include "window/text.h"
#include "wording/status.h"

#include <wx/intl.h>
#include <wx/string.h>

#include <algorithm>

namespace toehold::window {

namespace {

const drawing::AnchorMark* mark_of(const drawing::Overlay& overlay, const std::string& id) {
    const auto found = std::find_if(overlay.anchors.begin(), overlay.anchors.end(),
                                    [&id](const drawing::AnchorMark& mark) { return mark.id == id; });
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

std::string status_line(const std::string& check, const std::optional<double>& ratio, checks::Status status) {
    auto words = "D/C " + (ratio ? format::ratio_text(*ratio) : std::string{"-"}) + " ";
    words += wording::word(status);
    return check.empty() ? words : words + ": " + check;
}

std::string anchor_lines(const std::string& id, const session::Session& session, const drawing::Overlay& overlay) {
    std::string lines;
    if (const auto* anchor = fastener(session, id)) lines += "\n" + anchor->name;
    const auto* mark = mark_of(overlay, id);
    if (!mark) return lines + "\n" + utf8(_("no figures yet"));
    const auto force = [&session](double lb) { return format::figure_text(lb, "lb", session.display().system); };
    lines += "\n" + utf8(_("tension ")) + (mark->tension_lb ? force(*mark->tension_lb) : utf8(_("not known by hand"))) +
             utf8(_(", largest of all pushes ")) + force(mark->largest_tension_lb);
    if (mark->capacity_lb) lines += "\n" + utf8(_("capacity in tension ")) + force(*mark->capacity_lb);
    lines += "\n" + utf8(_("shear ")) + force(mark->shear_lb);
    if (mark->ratio || !mark->worst_check.empty())
        lines += "\n" + status_line(mark->worst_check, mark->ratio, mark->status);
    return lines;
}

std::string member_lines(const std::string& id, const session::Session& session) {
    const auto& framing = session.detail().framing;
    const auto index = model::find_member(framing, id);
    if (!index) return {};
    const auto member = model::member(framing, *index);
    auto lines = "\n" + length(member.width_in, session) + " x " + length(member.depth_in, session);
    if (member.length_stated) lines += ", " + length(model::length_in(member), session) + utf8(_(" long"));
    return lines;
}

/// The first result that speaks of a part: they stand worst first.
const checks::CheckResult* worst_of(const std::string& part, const session::Session& session) {
    if (!session.review()) return nullptr;
    for (const auto& result : session.review()->checks) {
        const auto parts = drawing::parts_of_subject(result.subject, session.detail());
        if (std::find(parts.begin(), parts.end(), part) != parts.end()) return &result;
    }
    return nullptr;
}

std::string size_lines(const std::string& part, const session::Session& session) {
    const auto& detail = session.detail();
    if (part == "plate")
        return "\n" + length(on_deck(detail).plate.thickness_in, session) + utf8(_(" thick, ")) +
               on_deck(detail).plate.metal;
    if (part == "decking" && on_deck(detail).layers.decking)
        return "\n" + length(on_deck(detail).layers.decking->thickness_in, session) + utf8(_(" thick"));
    if (part == "guard") return "\n" + length(detail.guard.height_in, session) + utf8(_(" above the walking surface"));
    for (const char* kind : {"block", "joist", "rim"})
        if (const auto id = drawing::id_of(part, kind); !id.empty()) return member_lines(id, session);
    return {};
}

std::string push_lines(const drawing::Overlay& overlay) {
    if (!overlay.push) return {};
    return "\n" + push_words(*overlay.push, overlay.system) +
           (overlay.push->governing ? utf8(_(", governing")) : std::string{}) +
           utf8(_("\ndrag to turn it; double-click for the push that governs"));
}

}  // namespace

std::string part_name(const std::string& part) {
    if (const auto id = drawing::id_of(part, "anchor"); !id.empty()) return utf8(_("Anchor ")) + id;
    if (const auto id = drawing::id_of(part, "block"); !id.empty()) return utf8(_("Block ")) + id;
    if (const auto id = drawing::id_of(part, "joist"); !id.empty()) return utf8(_("Joist ")) + id;
    if (const auto id = drawing::id_of(part, "rim"); !id.empty()) return utf8(_("Rim joist ")) + id;
    if (const auto id = drawing::id_of(part, "support"); !id.empty()) return utf8(_("Support ")) + id;
    if (const auto id = drawing::id_of(part, "shim"); !id.empty()) return utf8(_("Shim ")) + id;
    if (part == "plate") return utf8(_("Base plate"));
    if (part == "post") return utf8(_("Post"));
    if (part == "weld") return utf8(_("Weld of the post"));
    if (part == "guard") return utf8(_("Guard"));
    if (part == "push") return utf8(_("The push"));
    if (part == "decking") return utf8(_("Decking"));
    return part;
}

std::string tip(const std::string& part, const session::Session& session, const drawing::Overlay& overlay) {
    if (part.empty()) return {};
    const auto stale = session.freshness() == session::Freshness::stale ? utf8(_("\nstale: solving")) : std::string{};
    if (part == "push") return part_name(part) + push_lines(overlay) + stale;
    if (const auto id = drawing::id_of(part, "anchor"); !id.empty())
        return part_name(part) + anchor_lines(id, session, overlay) + stale;
    auto words = part_name(part) + size_lines(part, session);
    if (const auto* worst = worst_of(part, session))
        words += "\n" + status_line(worst->title, worst->ratio, worst->status) + stale;
    return words;
}

}  // namespace toehold::window
