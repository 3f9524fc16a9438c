#include "study/proof_load/test_chain.h"

#include "catalog/resolve.h"
#include "resistance/ultimate/calculation.h"
#include "resistance/ultimate/wood.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <map>
#include <tuple>
#include <utility>

namespace toehold::study {
namespace {

namespace ultimate = resistance::ultimate;
using checks::CheckResult;
using format::phrase;

/// What tells one result from another: a check may have several on one part.
using Name = std::tuple<std::string, std::string, std::string, std::size_t>;
using Results = std::map<Name, CheckResult>;

/// Beam shear and torsion, each as a share of what is allowed, as one share that grows in proportion to both: the
/// factor on the allowable stress with which the rule of the basis is met exactly. x/k + (y/k)^2 = 1, or x/k + y/k = 1.
double shear_and_torsion(double shear, double torsion, model::TorsionWithShear rule) {
    if (rule == model::TorsionWithShear::linear_two_thirds) return shear + torsion;
    return 0.5 * (torsion + std::sqrt(torsion * torsion + 4.0 * shear * shear));
}

void put_in_proportion(Results& results, model::TorsionWithShear rule) {
    for (auto& [name, result] : results) {
        if (result.id != "member-shear-torsion") continue;
        const auto& [id, part, aspect, number] = name;
        const auto shear = results.find({"member-shear", part, aspect, number});
        const auto torsion = results.find({"member-torsion", part, aspect, number});
        if (shear == results.end() || torsion == results.end()) continue;
        result.demand = shear_and_torsion(shear->second.ratio, torsion->second.ratio, rule);
        result.capacity = 1.0;
        result.ratio = result.demand;
    }
}

Results results_of(const catalog::Resolved& resolved, const TestedState& state, model::Moisture moisture) {
    std::map<Name, std::size_t> seen;
    Results results;
    for (CheckResult& result : check_state(resolved, state, moisture)) {
        Name name{result.id, model::key(result.part), result.aspect, 0};
        std::get<3>(name) = seen[name]++;
        results.emplace(std::move(name), std::move(result));
    }
    put_in_proportion(results, model::torsion_with_shear(resolved.detail.basis));
    return results;
}

/// demand = constant + per pound times push, through two pushes. Where that would have the base pushed back before any
/// push, as where the deck's weight counters it: in proportion to the larger push, which is more. `second` infinite: a
/// member that by the standard buckles sideways under the larger push. The standard's critical stress stands about as
/// far below the mean as its bending strength does, so that its use too grows in proportion.
void set_demand(TestedLink& link, double first, double second, double push_lb) {
    link.demand_per_lb = std::max(0.0, (second - first) / push_lb);
    link.constant_demand = first - link.demand_per_lb * push_lb;
    if (link.constant_demand < -1e-9 * first) link.demand_per_lb = second / (2.0 * push_lb);
    if (!std::isfinite(second)) link.demand_per_lb = first / push_lb;
    if (link.constant_demand < 1e-9 * first) link.constant_demand = 0.0;
    const double room = std::max(0.0, link.mean - link.constant_demand);
    link.breaks_at_lb = link.demand_per_lb > 0.0 ? room / link.demand_per_lb : std::numeric_limits<double>::infinity();
}

/// Links of one state, and those it leaves out.
class StateLinks {
  public:
    StateLinks(const catalog::Resolved& resolved, const TestedState& state, model::Moisture moisture)
        : resolved_(resolved),
          state_(state),
          first_(results_of(resolved, state, moisture)),
          second_(results_of(resolved, under(resolved, state, 2.0 * state.push_lb), moisture)) {
        resolved_.detail.basis.moisture = moisture;
    }

    /// Merges into what other states gave: the weaker of two links, the more used of two that are left out.
    void merge(std::map<Name, TestedLink>& links, std::map<Name, LeftOutLink>& left_out) const {
        for (const auto& [name, result] : first_) {
            const InTest what = in_test(resolved_, state_, result);
            if (const auto* const strength = std::get_if<LinkStrength>(&what)) {
                keep_weaker(links, name, link_of(name, result, *strength));
            } else if (const auto* const none = std::get_if<NoStrength>(&what)) {
                LeftOutLink& kept = left_out[name];
                if (kept.check.empty() || result.ratio > kept.share)
                    kept = {result.id, result.title, result.part, *none, result.ratio};
            }
        }
    }

    /// The worst result that nothing resists; nullptr: none.
    [[nodiscard]] const CheckResult* without_path() const {
        for (const auto& [name, result] : first_) {
            const bool none = result.status == checks::Status::no_path || !std::isfinite(result.ratio);
            if (none && !std::holds_alternative<Covered>(in_test(resolved_, state_, result))) return &result;
        }
        return nullptr;
    }

  private:
    [[nodiscard]] TestedLink link_of(const Name& name, const CheckResult& result, const LinkStrength& strength) const {
        TestedLink link;
        link.check = result.id;
        link.title = result.title;
        link.part = result.part;
        link.strength = strength;
        link.unit = result.unit;
        // The sign says which way a plate bends.
        const double capacity = std::abs(result.capacity);
        link.mean = capacity * strength.mean_over_capacity;
        link.framing_gives = state_.framing_gives;
        // By shares, since what a strength is may turn with the worst section.
        const auto other = second_.find(name);
        const double second = other == second_.end() ? 2.0 * result.ratio : other->second.ratio;
        set_demand(link, std::max(0.0, result.ratio) * capacity, std::max(0.0, second) * capacity, state_.push_lb);
        return link;
    }

    static void keep_weaker(std::map<Name, TestedLink>& links, const Name& name, TestedLink link) {
        const auto [place, fresh] = links.emplace(name, link);
        if (!fresh && link.breaks_at_lb < place->second.breaks_at_lb) place->second = std::move(link);
    }

    catalog::Resolved resolved_;
    const TestedState& state_;
    Results first_, second_;
};

/// The factors of a chain, each made when the first link asks for it.
class Factors {
  public:
    explicit Factors(TestChain& chain) : chain_(chain) {}

    std::size_t of(CommonCause cause, double variation, const model::PartId& member = {}) {
        const auto found = std::find_if(chain_.common.begin(), chain_.common.end(), [&](const CommonScatter& one) {
            return one.cause == cause && one.member == member;
        });
        if (found != chain_.common.end()) return static_cast<std::size_t>(found - chain_.common.begin());
        chain_.common.push_back({cause, member, variation});
        chain_.chain.factors.push_back({variation});
        return chain_.common.size() - 1;
    }

  private:
    TestChain& chain_;
};

std::vector<mechanics::SharedFactor> shared_by(const TestedLink& link, Factors& factors) {
    const LinkStrength& strength = link.strength;
    const double density_power = link.basis().density_power;
    std::vector<mechanics::SharedFactor> shared;
    if (strength.calculation_power > 0.0) {
        shared.push_back(
            {factors.of(CommonCause::calculation, ultimate::plate_force_variation), strength.calculation_power});
    }
    if (strength.wood) shared.push_back({factors.of(CommonCause::moisture, moisture_variation), 1.0});
    if (strength.fastened) shared.push_back({factors.of(CommonCause::workmanship, workmanship_variation), 1.0});
    if (strength.member && density_power > 0.0) {
        shared.push_back(
            {factors.of(CommonCause::density, ultimate::density_variation, *strength.member), density_power});
    }
    return shared;
}

void draw_from(TestChain& chain) {
    Factors factors(chain);
    for (const TestedLink& link : chain.links) {
        if (link.breaks_at_lb > far_away * chain.links.front().breaks_at_lb) break;
        chain.chain.links.push_back({link.mean, link.basis().variation, mechanics::Law::lognormal, link.demand_per_lb,
                                     link.constant_demand, shared_by(link, factors)});
    }
}

template <class Value>
std::vector<Value> values_of(std::map<Name, Value> all) {
    std::vector<Value> values;
    values.reserve(all.size());
    for (auto& [name, value] : all) values.push_back(std::move(value));
    return values;
}

TestChainOutcome refused(format::Phrase why) { return {std::nullopt, std::move(why)}; }

format::Phrase ends_there(const CheckResult& result) {
    return phrase("{}, {}: nothing there has a strength, so no breaking load can be given. `toehold check` says why.",
                  result.title, model::part_name(result.part));
}

format::Phrase breaks_before(const LeftOutLink& link, double push_lb) {
    return phrase(
        "{}, {}: it has no published mean strength, and {} is {:.1f} times its design value. It must be expected "
        "to break first, so no chance is given.",
        link.title, model::part_name(link.part), format::Quantity{push_lb, "lb"}, link.share);
}

}  // namespace

const LeftOutLink* most_used_left_out(const TestChain& chain) {
    const auto most = std::find_if(chain.left_out.begin(), chain.left_out.end(),
                                   [](const LeftOutLink& link) { return link.reason.why != LeftOutFor::deforms_only; });
    return most == chain.left_out.end() ? nullptr : &*most;
}

TestChainOutcome test_chain(const catalog::Resolved& resolved, const TestedBase& base, model::Moisture moisture) {
    std::map<Name, TestedLink> links;
    std::map<Name, LeftOutLink> left_out;
    for (const TestedState& state : base.central) {
        const StateLinks found(resolved, state, moisture);
        if (const CheckResult* const none = found.without_path()) return refused(ends_there(*none));
        found.merge(links, left_out);
    }
    TestChain chain;
    chain.links = values_of(std::move(links));
    chain.left_out = values_of(std::move(left_out));
    std::stable_sort(chain.links.begin(), chain.links.end(), [](const TestedLink& one, const TestedLink& other) {
        return one.breaks_at_lb < other.breaks_at_lb;
    });
    std::stable_sort(chain.left_out.begin(), chain.left_out.end(),
                     [](const LeftOutLink& one, const LeftOutLink& other) { return one.share > other.share; });
    const auto open = std::find_if(chain.left_out.begin(), chain.left_out.end(),
                                   [](const LeftOutLink& one) { return one.reason.why == LeftOutFor::not_specified; });
    if (open != chain.left_out.end())
        return refused(phrase("{}, {}: not specified in the file, so no chance is given.", open->title,
                              model::part_name(open->part)));
    const LeftOutLink* const unknown = most_used_left_out(chain);
    if (unknown != nullptr && unknown->share > far_beyond_design) return refused(breaks_before(*unknown, base.push_lb));
    if (chain.links.empty() || !std::isfinite(chain.links.front().breaks_at_lb))
        return refused(phrase("No link of this base has a published mean strength: no breaking load can be given."));
    draw_from(chain);
    return {std::move(chain), {}};
}

}  // namespace toehold::study
