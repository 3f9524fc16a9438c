#include "editing/parts/fastener_length.h"

#include <algorithm>
#include <utility>

namespace toehold::editing {
namespace {

void set(model::LagScrew& screw, double length_in) {
    screw.length_in = length_in;
    if (screw.thread_length_in) screw.thread_length_in = std::min(*screw.thread_length_in, length_in);
}
void set(model::WoodScrew& screw, double length_in) {
    screw.length_in = length_in;
    if (screw.thread_length_in) screw.thread_length_in = std::min(*screw.thread_length_in, length_in);
}
void set(model::ReportedFastener& fastener, double length_in) {
    fastener.length_in = length_in;
    fastener.thread_length_in = std::min(fastener.thread_length_in, length_in);
}
void set(model::ThroughBolt& bolt, double length_in) {
    if (!bolt.length_in) return;
    bolt.length_in = length_in;
    if (bolt.thread_length_in) bolt.thread_length_in = std::min(*bolt.thread_length_in, length_in);
}

}  // namespace

std::optional<double> length_in(const model::Fastener& fastener) {
    return std::visit([](const auto& one) { return std::optional<double>(one.length_in); }, fastener);
}

void set_length(model::Fastener& fastener, double length_in) {
    std::visit([&](auto& one) { set(one, length_in); }, fastener);
}

model::AnchorGroup* group_of(model::BaseDetail& detail, const std::string& anchor) {
    return const_cast<model::AnchorGroup*>(model::anchor_group(std::as_const(detail), anchor));
}

}  // namespace toehold::editing
