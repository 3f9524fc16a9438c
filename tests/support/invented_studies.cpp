#include "support/invented_studies.h"

#include "checks/registry.h"

#include <algorithm>
#include <cmath>

namespace toehold::test {
namespace {

using checks::Status;
using study::CheckRatio;
using study::Judged;

CheckRatio ratio_of(const checks::Check& check, double ratio) {
    return {check.id, check.title, model::anchor_part("A"), ratio, ratio > 1.0 ? Status::fails : Status::holds, false};
}

Judged judged(std::vector<CheckRatio> ratios, std::string id) {
    Judged made;
    made.detail = std::move(id);
    const auto worst = std::max_element(ratios.begin(), ratios.end(),
                                        [](const auto& one, const auto& other) { return one.ratio < other.ratio; });
    made.governing = *worst;
    made.limit = {worst->check, worst->title, worst->part};
    made.verdict = worst->ratio > 1.0 ? review::Verdict::inadequate : review::Verdict::adequate;
    made.checks = std::move(ratios);
    return made;
}

Judged of_one(const checks::Check& check, double ratio, std::string id) {
    return judged({ratio_of(check, ratio)}, std::move(id));
}

}  // namespace

study::Sweep invented_sweep(const study::Field& field, const std::vector<double>& values, double largest) {
    study::Sweep sweep{field, {}, false};
    const std::vector<checks::Check>& all = checks::registered_checks();
    for (std::size_t i = 0; i < values.size(); ++i) {
        const double t = static_cast<double>(i) / static_cast<double>(values.size() - 1);
        std::vector<CheckRatio> ratios;
        for (std::size_t k = 0; k < all.size(); ++k) {
            // Close together at the right end, so that labels must make room for each other.
            const double share = 1.0 - 0.01 * static_cast<double>(k);
            ratios.push_back(ratio_of(all[k], largest * share * (k % 3 == 0 ? 1.0 - 0.6 * t : 0.4 + 0.6 * t)));
        }
        sweep.points.push_back({values[i], judged(std::move(ratios), "point " + std::to_string(i))});
    }
    return sweep;
}

study::Tornado invented_tornado(const std::vector<study::Field>& fields, double now) {
    const checks::Check& check = checks::registered_checks().front();
    study::Tornado tornado;
    tornado.now = of_one(check, now, "");
    double swing = 0.3;
    for (const study::Field& field : fields) {
        if (!field.now) continue;
        // Every third moves the ratio one way only.
        const bool one_way = tornado.swings.size() % 3 == 2;
        study::Swing made{
            field,
            {*field.now * 0.9, of_one(check, now - swing, field.id + " down")},
            {*field.now * 1.1, of_one(check, one_way ? now - 0.8 * swing : now + swing, field.id + " up")},
            swing};
        tornado.swings.push_back(std::move(made));
        swing *= 0.7;
    }
    return tornado;
}

study::HoldingMap invented_map(const study::Asked& across, const study::Asked& up) {
    const std::vector<checks::Check>& all = checks::registered_checks();
    study::HoldingMap map;
    map.across = across.field;
    map.up = up.field;
    map.across_values = across.values;
    map.up_values = up.values;
    const double wide = across.values.back() - across.values.front(), high = up.values.back() - up.values.front();
    const auto ratio = [&](double a, double u) {
        return 0.6 + 0.3 * (a - across.values.front()) / wide + 0.35 * (u - up.values.front()) / high;
    };
    const auto check_at = [&](double a) -> const checks::Check& {
        return a > across.values.front() + 0.5 * wide ? all.at(1) : all.at(0);
    };
    for (const double u : up.values) {
        for (const double a : across.values)
            map.nodes.push_back({a, u, of_one(check_at(a), ratio(a, u), "node " + std::to_string(map.nodes.size()))});
    }
    const auto add = [&](study::MapAxis axis, std::size_t column, std::size_t row, bool upward) {
        const study::MapNode& one = map.at(column, row);
        const study::MapNode& other = upward ? map.at(column, row + 1) : map.at(column + 1, row);
        if (one.judged.holds() == other.judged.holds()) return;
        study::MapBorder border;
        border.axis = axis;
        border.column = column;
        border.row = row;
        const double from = upward ? one.up : one.across, to = upward ? other.up : other.across;
        const double t = (1.0 - *one.judged.ratio()) / (*other.judged.ratio() - *one.judged.ratio());
        border.holds = border.fails = from + t * (to - from);
        border.limit = other.judged.limit;
        map.borders.push_back(std::move(border));
    };
    for (std::size_t row = 0; row < up.values.size(); ++row) {
        for (std::size_t column = 0; column < across.values.size(); ++column) {
            if (row + 1 < up.values.size()) add(study::MapAxis::up, column, row, true);
            if (column + 1 < across.values.size()) add(study::MapAxis::across, column, row, false);
        }
    }
    return map;
}

}  // namespace toehold::test
