#include "model/member.h"

#include <algorithm>
#include <cmath>

namespace toehold::model {
namespace {

PlanAxis across(PlanAxis axis) { return axis == PlanAxis::x ? PlanAxis::y : PlanAxis::x; }

Member of_block(const Block& block, std::size_t index) {
    Member member{MemberKind::block,
                  index,
                  block.id,
                  block.along,
                  block.from_in,
                  block.to_in,
                  block.across_in,
                  block.width_in * block.plies,
                  block.depth_in * block.stack,
                  block.plies,
                  block.species,
                  block.grade};
    member.stack = block.stack;
    member.stack_fastened = block.stack_fastened;
    return member;
}

Member of_joist(const Joists& joists, std::size_t index) {
    const Joist& joist = joists.members[index];
    Member member{MemberKind::joist,
                  index,
                  joist.id,
                  joists.along,
                  joists.from_in.value_or(-beyond_any_plate_in),
                  joists.to_in.value_or(beyond_any_plate_in),
                  joist.offset_in,
                  joists.width_in * joist.plies,
                  joists.depth_in,
                  joist.plies,
                  joists.species,
                  joists.grade};
    member.length_stated = joists.from_in.has_value() && joists.to_in.has_value();
    return member;
}

Member of_rim(const Rim& rim, PlanAxis joists_along, std::size_t index) {
    return {MemberKind::rim,          index,        rim.id,    across(joists_along), rim.from_in, rim.to_in, rim.at_in,
            rim.width_in * rim.plies, rim.depth_in, rim.plies, rim.species,          rim.grade};
}

}  // namespace

std::vector<Member> members(const Framing& framing) {
    std::vector<Member> all;
    for (std::size_t index = 0; index < framing.blocks.size(); ++index)
        all.push_back(of_block(framing.blocks[index], index));
    if (framing.joists) {
        for (std::size_t index = 0; index < framing.joists->members.size(); ++index)
            all.push_back(of_joist(*framing.joists, index));
    }
    const PlanAxis along = framing.joists ? framing.joists->along : PlanAxis::y;
    for (std::size_t index = 0; index < framing.rims.size(); ++index)
        all.push_back(of_rim(framing.rims[index], along, index));
    return all;
}

Member member(const Framing& framing, std::size_t index) {
    std::size_t at = index;
    if (at < framing.blocks.size()) return of_block(framing.blocks[at], at);
    at -= framing.blocks.size();
    if (framing.joists) {
        if (at < framing.joists->members.size()) return of_joist(*framing.joists, at);
        at -= framing.joists->members.size();
    }
    return of_rim(framing.rims.at(at), framing.joists ? framing.joists->along : PlanAxis::y, at);
}

std::optional<std::size_t> find_member(const Framing& framing, const std::string& id) {
    const std::vector<Member> all = members(framing);
    const auto found = std::find_if(all.begin(), all.end(), [&](const Member& one) { return one.id == id; });
    if (found == all.end()) return std::nullopt;
    return static_cast<std::size_t>(found - all.begin());
}

const Joist* find_joist(const Framing& framing, const std::string& id) {
    if (!framing.joists) return nullptr;
    const std::vector<Joist>& all = framing.joists->members;
    const auto found = std::find_if(all.begin(), all.end(), [&](const Joist& joist) { return joist.id == id; });
    return found == all.end() ? nullptr : &*found;
}

std::string free_member_id(const Framing& framing, const std::string& letter) {
    for (int number = 1;; ++number) {
        std::string id = letter + std::to_string(number);
        const bool support = std::any_of(framing.supports.begin(), framing.supports.end(),
                                         [&](const JoistSupport& one) { return one.id == id; });
        if (!support && !find_member(framing, id)) return id;
    }
}

double length_in(const Member& member) { return member.to_in - member.from_in; }
double ply_width_in(const Member& member) { return member.width_in / member.plies; }
double piece_depth_in(const Member& member) { return member.depth_in / member.stack; }

const char* name(MemberKind kind) {
    switch (kind) {
        case MemberKind::block:
            return "block";
        case MemberKind::joist:
            return "joist";
        case MemberKind::rim:
            break;
    }
    return "rim";
}

PartId part_of(const JoistSupport& support) {
    return {support.kind == JoistSupport::Kind::ledger ? PartKind::ledger : PartKind::beam, support.id};
}

PartId part_of(const Member& member) {
    switch (member.kind) {
        case MemberKind::block:
            return {PartKind::block, member.id};
        case MemberKind::joist:
            return {PartKind::joist, member.id};
        case MemberKind::rim:
            break;
    }
    return {PartKind::rim, member.id};
}

bool meets(const Member& member, double end_in, bool upper_end, const Member& holder) {
    if (holder.along == member.along) return false;
    const double half = 0.5 * holder.width_in;
    const double face = upper_end ? holder.across_in - half : holder.across_in + half;
    const bool beside =
        member.across_in >= holder.from_in - end_fit_in && member.across_in <= holder.to_in + end_fit_in;
    return beside && std::abs(end_in - face) <= end_fit_in;
}

}  // namespace toehold::model
