// Blocks, and what holds the ends of blocks and joists.
#include "drawing/annotation/labels.h"
#include "model/member.h"
#include "paper/bill/collect.h"
#include "paper/site/wording.h"

#include <fmt/format.h>

#include <algorithm>
#include <utility>

namespace toehold::paper::bill {
namespace {

using drawing::length_figure;
using drawing::length_words;
using format::Phrase;
using format::phrase;

/// One end, or a line of alike ends: what holds each of them, how many they are, and where.
struct Ends {
    const model::EndConnection& connection;
    std::size_t count = 1;
    std::string where;
    units::System system = units::System::us;
};

void add(Collected& all, BillKind kind, Phrase name, std::size_t quantity, const Ends& ends,
         std::optional<double> length_in = {}) {
    all.add({kind, std::move(name), {}, quantity * ends.count, length_in, {}, {ends.where}});
}

std::size_t counted(int count) { return static_cast<std::size_t>(std::max(0, count)); }

Phrase nail_name(double diameter_in, double length_in, const char* const kind, units::System system) {
    const std::string penny = site::penny_size(diameter_in, length_in);
    const std::string shank = length_figure(diameter_in, system);
    return penny.empty() ? phrase("{}, {} diameter", format::verbatim(kind), shank)
                         : phrase("{} {} common, {} diameter", format::verbatim(kind), penny, shank);
}

void add_ends(Collected& /*all*/, const std::monostate& /*nothing*/, const Ends& /*ends*/) {}

void add_ends(Collected& all, const model::EndGrainFasteners& of, const Ends& ends) {
    using Kind = model::EndGrainFasteners::Kind;
    const std::string shank = length_words(of.diameter_in, ends.system);
    Phrase name = of.kind == Kind::nail         ? nail_name(of.diameter_in, of.length_in, "Nail", ends.system)
                  : of.kind == Kind::wood_screw ? phrase("Wood screw {}", shank)
                                                : phrase("Structural screw {}, report {}", shank, of.reported.report);
    add(all, BillKind::fastener, std::move(name), counted(of.count), ends, of.length_in);
}

void add_ends(Collected& all, const model::ToeNails& of, const Ends& ends) {
    add(all, BillKind::fastener, nail_name(of.diameter_in, of.length_in, "Nail", ends.system), counted(of.count), ends,
        of.length_in);
}

void add_ends(Collected& all, const model::SideAngles& of, const Ends& ends) {
    using Kind = model::SideAngles::Kind;
    const std::string shank = length_words(of.diameter_in, ends.system);
    const std::size_t angles = counted(of.sides), each = counted(2 * of.per_leg);
    add(all, BillKind::connector,
        phrase("Steel angle {} thick, {}", length_words(of.thickness_in, ends.system), of.metal), angles, ends);
    switch (of.kind) {
        case Kind::wood_screw:
            add(all, BillKind::fastener, phrase("Wood screw {}", shank), angles * each, ends, of.length_in);
            return;
        case Kind::lag_screw:
            add(all, BillKind::fastener, phrase("Lag screw {}", shank), angles * each, ends, of.length_in);
            return;
        case Kind::bolt:
            // With angles on both sides one bolt goes through both.
            add(all, BillKind::fastener, phrase("Bolt {} with nut and washers, through the wood", shank), each, ends);
            return;
    }
}

void add_ends(Collected& all, const model::ReportedConnector& of, const Ends& ends) {
    add(all, BillKind::connector,
        of.chosen ? phrase("{}, report {}", of.name, of.report)
                  : phrase("{}: NOT CHOSEN YET, the values are the least its report must give", of.name),
        1, ends);
}

void add_connection(Collected& all, const Ends& ends) {
    std::visit([&](const auto& one) { add_ends(all, one, ends); }, ends.connection);
}

Phrase piece_words(double thickness_in, double face_in, units::System system) {
    const std::string nominal = site::nominal_size(thickness_in, face_in);
    return nominal.empty() ? phrase("Block {} x {}", length_figure(thickness_in, system), length_words(face_in, system))
                           : phrase("Block {}", nominal);
}

void add_block(Collected& all, const model::Block& block, const catalog::MemberMaterial& wood, bool treated,
               units::System system) {
    const auto [thickness_in, face_in] = std::minmax(block.width_in, block.depth_in);
    all.add({BillKind::block,
             piece_words(thickness_in, face_in, system),
             treated ? phrase("{} {}, treated", wood.species.name, wood.grade.name)
                     : phrase("{} {}", wood.species.name, wood.grade.name),
             counted(block.plies * block.stack),
             block.to_in - block.from_in,
             {},
             {block.id}});
    for (const model::BlockEnd* const end : {&block.from_end, &block.to_end})
        add_connection(all, {end->connection, 1, block.id, system});
}

/// Joists whose place lies between both ends of the rim.
std::size_t joists_at(const model::Framing& framing, const model::Rim& rim) {
    const auto& joists = framing.joists->members;
    return static_cast<std::size_t>(std::count_if(joists.begin(), joists.end(), [&rim](const model::Joist& joist) {
        return joist.offset_in >= rim.from_in && joist.offset_in <= rim.to_in;
    }));
}

std::size_t missing(const model::EndConnection& connection) {
    return std::holds_alternative<std::monostate>(connection) ? 1 : 0;
}

}  // namespace

void add_framing(Collected& all, const model::Framing& framing, const catalog::Resolved& resolved,
                 units::System system) {
    for (std::size_t index = 0; index < framing.blocks.size(); ++index)
        add_block(all, framing.blocks[index], resolved.blocks.at(index), framing.preservative_treated, system);
    if (!framing.joists) return;
    for (const model::Rim& rim : framing.rims)
        add_connection(all, {rim.connection, joists_at(framing, rim), rim.id, system});
    for (const model::JoistSupport& support : framing.supports)
        add_connection(all, {support.connection, framing.joists->members.size(), support.id, system});
}

std::size_t ends_not_specified(const model::Framing& framing) {
    std::size_t count = 0;
    for (const model::Block& block : framing.blocks)
        count += missing(block.from_end.connection) + missing(block.to_end.connection);
    if (!framing.joists) return count;
    for (const model::Rim& rim : framing.rims) count += missing(rim.connection);
    for (const model::JoistSupport& support : framing.supports) count += missing(support.connection);
    return count;
}

}  // namespace toehold::paper::bill
