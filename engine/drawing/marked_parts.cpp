#include "drawing/marked_parts.h"

#include <algorithm>

namespace toehold::drawing {
namespace {

using model::PartId;
using model::PartKind;
using model::PartPiece;

/// The kinds by which a detail lists what a kind means.
std::vector<PartKind> listed_as(PartKind kind) {
    switch (kind) {
        case PartKind::hole:
            return {PartKind::anchor};
        case PartKind::shoe:
            return {PartKind::post};
        case PartKind::boards:
            return {PartKind::decking};
        case PartKind::framing:
            return {PartKind::block, PartKind::joist, PartKind::rim};
        default:
            return {kind};
    }
}

class Marked {
  public:
    explicit Marked(const model::BaseDetail& detail) : detail_(detail), all_(model::parts(detail)) {}

    void add(PartKind kind, const std::string& id) {
        if (kind == PartKind::none) return;
        if (kind == PartKind::fastener && !id.empty()) return add_anchors_with(id);
        if (kind == PartKind::fastener) return add(PartKind::anchor, {});
        if (kind == PartKind::base) return add(has_plate() ? PartKind::plate : PartKind::post, {});
        if (kind == PartKind::plug_in) {
            if (const auto part = model::find_part(all_, id)) add(*part);
            return;
        }
        for (const PartKind listed : listed_as(kind)) {
            for (const PartId& part : all_) {
                if (part.kind == listed && (id.empty() || part.id == id)) add(part);
            }
        }
    }

    [[nodiscard]] std::vector<PartId> parts() && { return std::move(parts_); }

  private:
    void add(const PartId& part) {
        if (!model::contains(parts_, part)) parts_.push_back(part);
    }

    [[nodiscard]] bool has_plate() const { return model::contains(all_, {PartKind::plate}); }

    /// By the name the user gave the fastener.
    void add_anchors_with(const std::string& name) {
        for (const PartId& part : all_) {
            if (part.kind != PartKind::anchor) continue;
            const model::AnchorGroup* group = model::anchor_group(detail_, part.id);
            const auto* reported = group ? std::get_if<model::ReportedFastener>(&group->fastener) : nullptr;
            if (reported && reported->name == name) add(part);
        }
    }

    const model::BaseDetail& detail_;
    std::vector<PartId> all_, parts_ = {};
};

}  // namespace

std::vector<PartId> marked_parts(const PartId& part, const model::BaseDetail& detail) {
    Marked marked(detail);
    if (part.piece == PartPiece::supports && part.kind == PartKind::rim) marked.add(PartKind::joist, {});
    marked.add(part.kind, part.id);
    if (part.piece == PartPiece::supports && part.kind == PartKind::joist) {
        marked.add(PartKind::ledger, {});
        marked.add(PartKind::beam, {});
    }
    if (part.piece == PartPiece::at_anchors) marked.add(PartKind::anchor, {});
    marked.add(part.at_kind, part.at_id);
    return std::move(marked).parts();
}

}  // namespace toehold::drawing
