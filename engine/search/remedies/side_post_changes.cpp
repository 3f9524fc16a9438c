// A larger, longer or unnotched post, and fasteners further apart.
#include "search/changes/anchors.h"
#include "search/changes/side_rows.h"
#include "search/changes/side_wood.h"
#include "search/remedies/side_changes.h"

#include "model/side_geometry.h"

#include <algorithm>
#include <map>
#include <memory>

namespace toehold::search {
namespace {

using catalog::Resolved;
using format::Dimension;
using format::Phrase;
using format::phrase;
using model::BaseDetail;

/// The member as a part: `rim R1`.
Phrase member_name(const BaseDetail& detail) {
    const std::optional<model::Member> member = model::side_member(detail);
    return member ? model::part_name(model::part_of(*member)) : format::verbatim(on_side(detail).member);
}

std::vector<Change> larger_posts(const Resolved& resolved, const catalog::Catalog& catalog) {
    const auto* const post = std::get_if<model::WoodPost>(&resolved.detail.post);
    std::vector<Change> changes;
    if (post == nullptr) return changes;
    for (const std::string& size : post_sizes(resolved.detail, catalog)) {
        const Lumber section = lumber(size).value();
        const double area_in2 = section.thickness_in * section.width_in;
        if (!(area_in2 > post->width_in * post->depth_in + 0.01)) continue;
        changes.push_back({changes.empty() ? "larger-post" : "much-larger-post", "post-size",
                           [size](BaseDetail& detail) { return set_post_size(detail, size); },
                           [size, section](const BaseDetail&) {
                               return phrase("Use a {} post, {} along the rail and {} across it.", size,
                                             Dimension{section.thickness_in}, Dimension{section.width_in});
                           },
                           "post"});
    }
    return changes;
}

Change unnotched() {
    return {"unnotched-post", "notch", without_notch, [](const BaseDetail& changed) {
                return phrase("Use a post that is not notched, its whole depth against {}.", member_name(changed));
            }};
}

/// Down to the member's lower edge.
Change longer_post() {
    return {"longer-post", "bottom",
            [](BaseDetail& detail) {
                const std::optional<model::Member> member = model::side_member(detail);
                if (!member || on_side(detail).post_bottom_below_top_in >= member->depth_in)
                    return refused(phrase("the post reaches down the whole member already"));
                return set_post_bottom(detail, member->depth_in);
            },
            [](const BaseDetail& changed) {
                return phrase("Let the post reach down to {} below the top of {}.",
                              Dimension{on_side(changed).post_bottom_below_top_in}, member_name(changed));
            }};
}

/// Diameters by the size of the fastener: another change may have made them larger.
using Diameters = std::map<std::string, double>;

Diameters diameters_of(const catalog::Catalog& catalog) {
    Diameters all;
    for (const auto& row : catalog.lag_screws) all[row.id] = row.diameter_in;
    for (const auto& row : catalog.wood_screws) all[row.id] = row.diameter_in;
    for (const auto& row : catalog.bolts) all[row.id] = row.diameter_in;
    return all;
}

std::optional<RowHeights> widest_of(const BaseDetail& detail, const Diameters& diameters) {
    const auto found = diameters.find(common_size(detail));
    return found == diameters.end() ? std::nullopt : widest_rows(detail, found->second);
}

Phrase rows_words(const BaseDetail& changed) {
    const std::vector<double> rows = side_rows(changed);
    return phrase("Set the upper fasteners {} and the lower ones {} below the top of {}.", Dimension{rows.front()},
                  Dimension{rows.back()}, member_name(changed));
}

Change rows_apart(const std::shared_ptr<const Diameters>& diameters) {
    return {"fasteners-apart", "heights",
            [diameters](BaseDetail& detail) {
                const std::optional<RowHeights> widest = widest_of(detail, *diameters);
                const std::vector<double> now = side_rows(detail);
                if (!widest) return refused(phrase("the member leaves no room for fasteners further apart"));
                if (now.size() > 1 && now.back() - now.front() >= widest->lower_in - widest->upper_in)
                    return refused(phrase("the fasteners are as far apart as their edge distances allow"));
                return set_rows(detail, *widest);
            },
            rows_words};
}

/// Within the edge distances, where they stand too near an edge or an end.
Change rows_clear(const std::shared_ptr<const Diameters>& diameters) {
    return {
        "fasteners-clear-of-edges", "heights",
        [diameters](BaseDetail& detail) {
            const std::optional<RowHeights> widest = widest_of(detail, *diameters);
            const std::vector<double> now = side_rows(detail);
            if (!widest || now.empty()) return refused(phrase("the member leaves no room for fasteners further apart"));
            const RowHeights within{std::max(now.front(), widest->upper_in), std::min(now.back(), widest->lower_in)};
            if (within == RowHeights{now.front(), now.back()})
                return refused(phrase("the fasteners keep their edge distances already"));
            return set_rows(detail, within);
        },
        rows_words};
}

Change second_row(const std::shared_ptr<const Diameters>& diameters) {
    return {"second-fasteners", "heights",
            [diameters](BaseDetail& detail) {
                const std::optional<RowHeights> widest = widest_of(detail, *diameters);
                if (!widest) return refused(phrase("the member leaves no room for a second row of fasteners"));
                return add_row(detail, widest->lower_in);
            },
            [](const BaseDetail& changed) {
                return phrase("Add fasteners like the first {} below the top of {}.",
                              Dimension{side_rows(changed).back()}, member_name(changed));
            }};
}

}  // namespace

std::vector<Change> side_post_changes(const Resolved& resolved, const catalog::Catalog& catalog) {
    std::vector<Change> changes{unnotched()};
    for (Change& change : larger_posts(resolved, catalog)) changes.push_back(std::move(change));
    changes.push_back(longer_post());
    const auto diameters = std::make_shared<const Diameters>(diameters_of(catalog));
    changes.push_back(second_row(diameters));
    changes.push_back(rows_clear(diameters));
    changes.push_back(rows_apart(diameters));
    return changes;
}

}  // namespace toehold::search
