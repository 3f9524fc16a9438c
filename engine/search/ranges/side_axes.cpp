// The axes of a post on a member's side.
#include "search/changes/anchors.h"
#include "search/changes/side_hardware.h"
#include "search/changes/side_wood.h"
#include "search/ranges/axes.h"
#include "units/quantity.h"

#include <map>
#include <stdexcept>

namespace toehold::search {
namespace {

using format::phrase;
using model::BaseDetail;

constexpr double usual_hardware_lb = 1600.0;  // at the ends of new blocks

Applied as_it_is(BaseDetail& /*stays*/) { return {}; }

Lumber lumber_named(const std::string& name) {
    const std::optional<Lumber> size = lumber(name);
    if (!size) throw std::invalid_argument("no size of lumber is " + name);
    return *size;
}

Axis plies(const SideRanges& ranges) {
    Axis axis{"plies", phrase("Pieces of the member"), {}};
    for (const int count : ranges.plies)
        axis.options.push_back(
            {std::to_string(count), [count](BaseDetail& detail) { return set_member_plies(detail, count); }});
    return axis;
}

using SetBlocks = Applied (*)(BaseDetail&, const Lumber&, double);

Axis blocks_axis(std::string id, format::Phrase title, const std::vector<std::string>& sizes, SetBlocks set) {
    Axis axis{std::move(id), std::move(title), {}};
    for (const std::string& size : sizes) {
        if (size.empty()) {
            axis.options.push_back({label_as_is, as_it_is});
            continue;
        }
        axis.options.push_back(
            {size, [set, of = lumber_named(size)](BaseDetail& detail) { return set(detail, of, usual_hardware_lb); }});
    }
    return axis;
}

using SetForce = Applied (*)(BaseDetail&, double);

Axis force_axis(std::string id, format::Phrase title, const std::vector<double>& forces_lb, SetForce set) {
    Axis axis{std::move(id), std::move(title), {}};
    for (const double force_lb : forces_lb) {
        axis.options.push_back({force_label(force_lb), [set, force_lb](BaseDetail& detail) {
                                    return force_lb > 0.0 ? set(detail, force_lb) : Applied{};
                                }});
    }
    return axis;
}

Axis post_axis(const SideRanges& ranges) {
    Axis axis{"post-size", phrase("Post"), {}};
    for (const std::string& size : ranges.post_sizes)
        axis.options.push_back({size, [size](BaseDetail& detail) { return set_post_size(detail, size); }});
    return axis;
}

Axis notches(const SideRanges& ranges) {
    Axis axis{"notch", phrase("Notch"), {}};
    for (const bool without : ranges.unnotched)
        axis.options.push_back({without ? label_none : label_as_is, without ? without_notch : as_it_is});
    return axis;
}

Axis bottoms(const SideRanges& ranges) {
    Axis axis{"bottom", phrase("Post's lower end below the member's top"), {}};
    for (const double below_in : ranges.post_bottoms_in)
        axis.options.push_back({units::fraction_in(below_in),
                                [below_in](BaseDetail& detail) { return set_post_bottom(detail, below_in); }});
    return axis;
}

Axis brackets(const SideRanges& ranges) {
    Axis axis{"bracket", phrase("Bracket thickness"), {}};
    for (const double thickness_in : ranges.brackets_in)
        axis.options.push_back({units::fraction_in(thickness_in), [thickness_in](BaseDetail& detail) {
                                    return set_bracket_thickness(detail, thickness_in);
                                }});
    return axis;
}

Axis heights(const SideRanges& ranges) {
    Axis axis{"heights", phrase("Fasteners below the member's top"), {}};
    for (const RowHeights& rows : ranges.heights)
        axis.options.push_back({label(rows), [rows](BaseDetail& detail) { return set_rows(detail, rows); }});
    return axis;
}

/// Wide washers by the size of the fastener they go with.
std::map<std::string, std::string> wide_washers(const catalog::Catalog& catalog) {
    std::map<std::string, std::string> washers;
    for (const auto& row : catalog.lag_screws) washers[row.id] = plain_washer(catalog, row.diameter_in, true);
    for (const auto& row : catalog.bolts) washers[row.id] = plain_washer(catalog, row.diameter_in, true);
    return washers;
}

Axis heads(const Asked& asked) {
    Axis axis{"head", phrase("Under the heads"), {}};
    const std::map<std::string, std::string> washers = wide_washers(asked.catalog);
    for (const HeadChoice& choice : asked.ranges.side.heads) {
        if (choice.kind == HeadChoice::Kind::plate) {
            const model::BackingPlate plate{choice.side_in, choice.side_in, choice.thickness_in, backing_metal(asked)};
            axis.options.push_back(
                {label(choice), [plate](BaseDetail& detail) { return set_head_plate(detail, plate); }});
            continue;
        }
        axis.options.push_back({label(choice), [washers](BaseDetail& detail) {
                                    const auto found = washers.find(common_size(detail));
                                    if (found == washers.end() || found->second.empty())
                                        return refused(phrase("the catalog has no such washer for these anchors"));
                                    return set_head_washer(detail, model::Washer{found->second});
                                }});
    }
    return axis;
}

}  // namespace

std::string force_label(double force_lb) {
    return force_lb > 0.0 ? label(EndChoice{EndChoice::Kind::hardware, force_lb}) : std::string(label_as_is);
}

std::vector<Axis> side_axes(const Asked& asked) {
    const SideRanges& ranges = asked.ranges.side;
    std::vector<Axis> axes;
    const auto add = [&axes](Axis axis) {
        if (!axis.options.empty()) axes.push_back(std::move(axis));
    };
    add(plies(ranges));
    add(blocks_axis("behind", phrase("Block behind the member"), ranges.behind, block_behind));
    add(blocks_axis("next-joist", phrase("Blocks to the next joist"), ranges.next_joist, blocks_to_next_joist));
    add(force_axis("rim-ends", phrase("Rim to joists"), ranges.rim_ends_lb, rim_hardware));
    add(notches(ranges));
    add(post_axis(ranges));
    add(bottoms(ranges));
    add(brackets(ranges));
    for (Axis& axis : anchor_axes(asked)) add(std::move(axis));
    add(heights(ranges));
    add(heads(asked));
    add(force_axis("ties", phrase("Ties"), ranges.ties_lb, add_ties));
    for (Axis& axis : framing_axes(asked)) add(std::move(axis));
    return axes;
}

}  // namespace toehold::search
