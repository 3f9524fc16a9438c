#include "search/changes/anchors.h"
#include "search/ranges/axes.h"
#include "units/quantity.h"

#include <map>
#include <stdexcept>

namespace toehold::search {
namespace {

using format::phrase;
using model::BaseDetail;

FastenerSize looked_up(const AnchorChoice& choice, const catalog::Catalog& catalog) {
    const std::optional<FastenerSize> size = fastener_size(catalog, choice.size, choice.grade);
    if (!size) throw std::invalid_argument("no fastener is " + label(choice));
    return *size;
}

Axis anchors(const Asked& asked) {
    Axis axis{"anchor", phrase("Anchors"), {}};
    const std::vector<std::string> stock = asked_stock(asked.ranges);
    const Holes holes = holes_after(asked.ranges);
    std::optional<double> length_in;
    if (!asked.ranges.lengths_in.empty()) length_in = asked.ranges.lengths_in.front();
    for (const AnchorChoice& choice : asked.ranges.anchors) {
        axis.options.push_back(
            {label(choice), [size = looked_up(choice, asked.catalog), stock, holes, length_in](BaseDetail& detail) {
                 if (is_asked_stock(detail, stock)) return set_fastener_in_holes(detail, size, length_in);
                 return set_fastener(detail, size, length_in, holes);
             }});
    }
    return axis;
}

struct Kinds {
    bool bolts = false, screws = false;
};

/// What the space's anchors can be.
Kinds kinds_asked(const Asked& asked) {
    Kinds kinds;
    for (const AnchorChoice& choice : asked.ranges.anchors) {
        const bool bolt = looked_up(choice, asked.catalog).kind == FastenerSize::Kind::bolt;
        kinds.bolts = kinds.bolts || bolt;
        kinds.screws = kinds.screws || !bolt;
    }
    if (!asked.ranges.anchors.empty()) return kinds;
    kinds.bolts = all_bolts(asked.base.detail);
    kinds.screws = !kinds.bolts;
    return kinds;
}

Applied all_bolts_to_suit(BaseDetail& detail) {
    if (!all_bolts(detail)) return meaningless(phrase("screws are tried in the lengths asked for"));
    bolts_to_suit(detail);
    return {};
}

Axis lengths(const Asked& asked) {
    Axis axis{"length", phrase("Screw length"), {}};
    for (const double length_in : asked.ranges.lengths_in) {
        axis.options.push_back({units::fraction_in(length_in),
                                [length_in](BaseDetail& detail) { return set_screw_length(detail, length_in); }});
    }
    if (kinds_asked(asked).bolts) axis.options.push_back({"to suit", all_bolts_to_suit});
    return axis;
}

Axis patterns(const Asked& asked) {
    Axis axis{"pattern", phrase("Hole pattern"), {}};
    const std::vector<std::string> stock = asked_stock(asked.ranges);
    for (const Pattern& pattern : asked.ranges.patterns) {
        axis.options.push_back({label(pattern), [pattern, stock](BaseDetail& detail) {
                                    if (is_asked_stock(detail, stock))
                                        return meaningless(phrase("a stock plate keeps its own holes"));
                                    return lay_out_holes(detail, pattern);
                                }});
    }
    if (!stock.empty())
        axis.options.push_back({"stock", [stock](BaseDetail& detail) {
                                    if (is_asked_stock(detail, stock)) return Applied{};
                                    return meaningless(phrase("only a stock plate keeps its own holes"));
                                }});
    return axis;
}

/// Plain washers by the size of the fastener they go with; an empty one stands for a fastener from a report.
struct Washers {
    std::map<std::string, std::string> wide, narrow;
};

Washers washers_by_size(const Asked& asked) {
    Washers washers;
    const auto add = [&](const std::string& size, double diameter_in) {
        washers.wide[size] = plain_washer(asked.catalog, diameter_in, true);
        washers.narrow[size] = plain_washer(asked.catalog, diameter_in, false);
    };
    for (const auto& row : asked.catalog.lag_screws) add(row.id, row.diameter_in);
    for (const auto& row : asked.catalog.bolts) add(row.id, row.diameter_in);
    for (const catalog::Anchor& anchor : asked.base.anchors) {
        if (anchor.reported) add({}, anchor.diameter_in);
    }
    return washers;
}

Applied no_washer() { return refused(phrase("the catalog has no such washer for these anchors")); }

Axis washers(const Asked& asked) {
    Axis axis{"washer", phrase("Washer on the plate"), {}};
    const Washers all = washers_by_size(asked);
    for (const WasherChoice choice : asked.ranges.washers) {
        const auto& sizes = choice == WasherChoice::narrow ? all.narrow : all.wide;
        axis.options.push_back({std::string(word(choice)), [choice, sizes](BaseDetail& detail) {
                                    std::optional<model::Washer> washer;
                                    if (choice != WasherChoice::none) {
                                        const auto found = sizes.find(common_size(detail));
                                        if (found == sizes.end() || found->second.empty()) return no_washer();
                                        washer = model::Washer{found->second};
                                    }
                                    for (model::AnchorGroup& group : anchor_groups(detail)) group.washer = washer;
                                    return Applied{};
                                }});
    }
    return axis;
}

/// What bolts are tightened against; nullptr: wood.
const catalog::Metal* main_metal(const catalog::Resolved& base) {
    if (kind(base.detail.mount) == model::MountKind::plate_on_deck) return &on_deck(base).plate_metal;
    const std::optional<catalog::Metal>& bracket = on_side(base).bracket_metal;
    return bracket ? &*bracket : nullptr;
}

Option backing_option(const BackingChoice& choice, const Asked& asked) {
    switch (choice.kind) {
        case BackingChoice::Kind::none:
            return {label(choice), [](BaseDetail& detail) {
                        return all_bolts(detail) ? set_below(detail, std::monostate{}) : Applied{};
                    }};
        case BackingChoice::Kind::wide_washer:
            return {label(choice), [wide = washers_by_size(asked).wide](BaseDetail& detail) {
                        const auto found = wide.find(common_size(detail));
                        if (all_bolts(detail) && (found == wide.end() || found->second.empty())) return no_washer();
                        return set_below(detail, found == wide.end() ? model::Washer{} : model::Washer{found->second});
                    }};
        case BackingChoice::Kind::plate:
            break;
    }
    const model::BackingPlate plate{choice.side_in, choice.side_in, choice.thickness_in, backing_metal(asked)};
    return {label(choice), [plate](BaseDetail& detail) { return set_below(detail, plate); }};
}

Axis backings(const Asked& asked) {
    const bool on_side = kind(asked.base.detail.mount) == model::MountKind::side_fastened;
    Axis axis{"backing", on_side ? phrase("Under the nuts") : phrase("Below the framing"), {}};
    bool none = false;
    for (const BackingChoice& choice : asked.ranges.backings) {
        none = none || choice.kind == BackingChoice::Kind::none;
        axis.options.push_back(backing_option(choice, asked));
    }
    // A screw has nothing below it, whatever is asked of bolts.
    if (!none && kinds_asked(asked).screws)
        axis.options.push_back({"screws", [](BaseDetail& detail) {
                                    if (!all_bolts(detail)) return Applied{};
                                    return meaningless(phrase("bolts are tried with what was asked for below"));
                                }});
    return axis;
}

}  // namespace

std::string backing_metal(const Asked& asked) {
    const catalog::Metal* const metal = main_metal(asked.base);
    return metal == nullptr || metal->kind == catalog::MetalKind::aluminum ? "steel-a36" : metal->id;
}

std::vector<Axis> anchor_axes(const Asked& asked) {
    std::vector<Axis> axes;
    if (!asked.ranges.anchors.empty()) axes.push_back(anchors(asked));
    if (!asked.ranges.lengths_in.empty()) axes.push_back(lengths(asked));
    if (!asked.ranges.patterns.empty()) axes.push_back(patterns(asked));
    if (!asked.ranges.washers.empty()) axes.push_back(washers(asked));
    if (!asked.ranges.backings.empty()) axes.push_back(backings(asked));
    return axes;
}

}  // namespace toehold::search
