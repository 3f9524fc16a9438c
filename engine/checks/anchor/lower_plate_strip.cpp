#include "checks/anchor/lower_plate_strip.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace toehold::checks {
namespace {

using Bolts = std::vector<StripBolt>;
using Pressures = std::vector<StripPressure>;

constexpr int lengths_tried = 200;

double total_lb(const Bolts& bolts) {
    double sum = 0.0;
    for (const StripBolt& bolt : bolts) sum += bolt.tension_lb;
    return sum;
}

double resultant_in(const Bolts& bolts) {
    double moment = 0.0;
    for (const StripBolt& bolt : bolts) moment += bolt.tension_lb * bolt.at_in;
    return moment / total_lb(bolts);
}

double shear_lb(const Bolts& bolts, const Pressures& pressures, double at_in) {
    double shear = 0.0;
    for (const StripPressure& pressure : pressures)
        shear += pressure.lb_per_in * std::clamp(at_in - pressure.from_in, 0.0, pressure.to_in - pressure.from_in);
    for (const StripBolt& bolt : bolts) {
        if (bolt.at_in < at_in) shear -= bolt.tension_lb;
    }
    return shear;
}

double moment_lb_in(const Bolts& bolts, const Pressures& pressures, double at_in) {
    double moment = 0.0;
    for (const StripPressure& pressure : pressures) {
        const double length = std::clamp(at_in - pressure.from_in, 0.0, pressure.to_in - pressure.from_in);
        moment += pressure.lb_per_in * length * (at_in - pressure.from_in - 0.5 * length);
    }
    for (const StripBolt& bolt : bolts) moment -= bolt.tension_lb * std::max(at_in - bolt.at_in, 0.0);
    return moment;
}

StripUse use(const Bolts& bolts, Pressures pressures, const StripStrength& strength) {
    StripUse use;
    for (const StripPressure& pressure : pressures) use.lb_per_in = std::max(use.lb_per_in, pressure.lb_per_in);
    use.moment_lb_in = strip_moment_lb_in(bolts, pressures);
    use.ratio = std::max(use.lb_per_in / strength.lb_per_in, use.moment_lb_in / strength.moment_lb_in);
    use.pressures = std::move(pressures);
    return use;
}

Pressures shared(const Bolts& bolts, double length_in) {
    const double middle_in = resultant_in(bolts);
    return {{middle_in - 0.5 * length_in, middle_in + 0.5 * length_in, total_lb(bolts) / length_in}};
}

Pressures own(const Bolts& bolts, double length_in) {
    Pressures pressures;
    for (const StripBolt& bolt : bolts) {
        if (bolt.tension_lb > 0.0)
            pressures.push_back(
                {bolt.at_in - 0.5 * length_in, bolt.at_in + 0.5 * length_in, bolt.tension_lb / length_in});
    }
    return pressures;
}

/// As long as the strip is on both sides of every pulling bolt, and as far as they are apart.
double longest_own_in(const Bolts& bolts, double from_in, double to_in) {
    double longest = std::numeric_limits<double>::infinity();
    for (const StripBolt& bolt : bolts) {
        if (!(bolt.tension_lb > 0.0)) continue;
        longest = std::min(longest, 2.0 * std::min(bolt.at_in - from_in, to_in - bolt.at_in));
        for (const StripBolt& other : bolts) {
            const double apart_in = std::abs(other.at_in - bolt.at_in);
            if (other.tension_lb > 0.0 && apart_in > 0.0) longest = std::min(longest, apart_in);
        }
    }
    return longest;
}

}  // namespace

double strip_moment_lb_in(const std::vector<StripBolt>& bolts, const std::vector<StripPressure>& pressures) {
    // The moment turns where the shear does: at a bolt, or within a pressure where the shear passes through zero.
    double largest = 0.0;
    const auto consider = [&](double at_in) {
        largest = std::max(largest, std::abs(moment_lb_in(bolts, pressures, at_in)));
    };
    for (const StripBolt& bolt : bolts) consider(bolt.at_in);
    for (const StripPressure& pressure : pressures) {
        std::vector<double> cuts{pressure.from_in, pressure.to_in};
        for (const StripBolt& bolt : bolts) {
            if (bolt.at_in > pressure.from_in && bolt.at_in < pressure.to_in) cuts.push_back(bolt.at_in);
        }
        std::sort(cuts.begin(), cuts.end());
        for (std::size_t index = 1; index < cuts.size(); ++index) {
            const double middle_in = 0.5 * (cuts[index - 1] + cuts[index]);
            const double zero_in = middle_in - shear_lb(bolts, pressures, middle_in) / pressure.lb_per_in;
            if (zero_in > cuts[index - 1] && zero_in < cuts[index]) consider(zero_in);
        }
    }
    return largest;
}

StripUse best_strip(const std::vector<StripBolt>& bolts, double from_in, double to_in, const StripStrength& strength) {
    StripUse best;
    best.ratio = std::numeric_limits<double>::infinity();
    if (!(total_lb(bolts) > 0.0)) return {};
    const double middle_in = resultant_in(bolts);
    const double longest_shared_in = 2.0 * std::min(middle_in - from_in, to_in - middle_in);
    const double longest_own = longest_own_in(bolts, from_in, to_in);
    for (int step = 1; step <= lengths_tried; ++step) {
        const double part = static_cast<double>(step) / lengths_tried;
        if (longest_shared_in > 0.0) {
            StripUse one = use(bolts, shared(bolts, part * longest_shared_in), strength);
            if (one.ratio < best.ratio) best = std::move(one);
        }
        if (longest_own > 0.0) {
            StripUse one = use(bolts, own(bolts, part * longest_own), strength);
            if (one.ratio < best.ratio) best = std::move(one);
        }
    }
    return best;
}

}  // namespace toehold::checks
