#include "paper/bill/bill.h"

#include "paper/bill/collect.h"

#include <algorithm>
#include <utility>

namespace toehold::paper {
namespace bill {
namespace {

bool alike(const BillItem& one, const BillItem& other) {
    return one.kind == other.kind && one.name == other.name && one.material == other.material &&
           one.length_in == other.length_in && one.weight_lb == other.weight_lb;
}

}  // namespace

void Collected::add(BillItem item) {
    if (item.quantity == 0) return;
    const auto same = std::find_if(items_.begin(), items_.end(), [&](const BillItem& one) { return alike(one, item); });
    if (same == items_.end()) {
        items_.push_back(std::move(item));
        return;
    }
    same->quantity += item.quantity;
    for (const std::string& where : item.where) {
        if (std::find(same->where.begin(), same->where.end(), where) == same->where.end()) same->where.push_back(where);
    }
}

std::vector<BillItem> Collected::items() const {
    std::vector<BillItem> sorted = items_;
    std::stable_sort(sorted.begin(), sorted.end(),
                     [](const BillItem& one, const BillItem& other) { return one.kind < other.kind; });
    return sorted;
}

namespace {

bool on_a_side(const review::ResolvedPost& post) {
    return kind(post.resolved.detail.mount) == model::MountKind::side_fastened;
}

std::vector<format::Phrase> notes(const model::Framing& framing, const std::vector<review::ResolvedPost>& posts) {
    using format::phrase;
    std::vector<format::Phrase> all{
        phrase("Posts: from the top of the plate to the top of the guard; deduct what the rail needs."),
        phrase("Weights: plates and backing pieces without their holes, from nominal sizes, for ordering and lifting."),
        phrase("Not in this bill: rails and infill, joists and rims, deck boards with their fasteners, shims, weld "
               "metal, waste."),
        phrase("Sizes are those of the file. Substitutions change the calculation.")};
    if (std::any_of(posts.begin(), posts.end(), on_a_side)) {
        all.insert(
            all.begin() + 1,
            phrase("Posts on a member's side: from their lower end to the top of the guard; deduct what the rail "
                   "needs. Packing and siding behind them are not in this bill."));
        if (std::all_of(posts.begin(), posts.end(), on_a_side)) all.erase(all.begin());
    }
    if (const std::size_t missing = bill::ends_not_specified(framing); missing > 0) {
        all.insert(
            all.begin(),
            phrase("NOT SPECIFIED, and so not counted: the connections of {} member ends or lines of joist ends.",
                   missing));
    }
    return all;
}

}  // namespace
}  // namespace bill

double Bill::plate_weight_lb() const {
    double sum = 0.0;
    for (const BillItem& item : items) sum += static_cast<double>(item.quantity) * item.weight_lb.value_or(0.0);
    return sum;
}

Bill bill_of_materials(const model::Project& project, const std::vector<review::ResolvedPost>& posts,
                       units::System system) {
    bill::Collected all;
    for (const review::ResolvedPost& post : posts) bill::add_post(all, post, system);
    if (!posts.empty()) bill::add_framing(all, project.framing, posts.front().resolved, system);
    return {project.name, all.items(), bill::notes(project.framing, posts)};
}

}  // namespace toehold::paper
