#include "search/score/side_pieces.h"

#include "model/side_geometry.h"

#include <algorithm>

namespace toehold::search {
namespace {

bool on_a_side(const catalog::Resolved& resolved) {
    return kind(resolved.detail.mount) == model::MountKind::side_fastened;
}

}  // namespace

std::vector<WoodPiece> side_wood(const catalog::Resolved& resolved) {
    std::vector<WoodPiece> pieces;
    if (!on_a_side(resolved)) return pieces;
    const model::BaseDetail& detail = resolved.detail;
    if (const auto* const post = std::get_if<model::WoodPost>(&detail.post)) {
        const double length_in = model::lever_height_in(detail) + on_side(detail).post_bottom_below_top_in;
        pieces.push_back({post->width_in, post->depth_in, length_in});
    }
    const std::optional<model::Member> member = model::side_member(detail);
    if (!member || member->kind == model::MemberKind::block) return pieces;
    for (int ply = 1; ply < member->plies; ++ply)
        pieces.push_back({model::ply_width_in(*member), member->depth_in, model::length_in(*member)});
    return pieces;
}

int side_connectors(const catalog::Resolved& resolved) {
    if (!on_a_side(resolved)) return 0;
    const model::BaseDetail& detail = resolved.detail;
    int connectors = static_cast<int>(on_side(detail).ties.size());
    for (const model::Rim& rim : detail.framing.rims) {
        if (rim.id != on_side(detail).member || !detail.framing.joists) continue;
        if (!std::holds_alternative<model::ReportedConnector>(rim.connection)) continue;
        const auto& joists = detail.framing.joists->members;
        connectors += static_cast<int>(std::count_if(joists.begin(), joists.end(), [&rim](const model::Joist& joist) {
            return joist.offset_in >= rim.from_in && joist.offset_in <= rim.to_in;
        }));
    }
    return connectors;
}

}  // namespace toehold::search
