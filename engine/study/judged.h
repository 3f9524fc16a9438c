#pragma once
// What the engine says of one of the details a study makes, as little as a chart needs of it.
#include "demand/demand.h"
#include "demand/kept.h"
#include "review/facts.h"
#include "search/run/parallel.h"
#include "study/field.h"

#include <optional>
#include <string>
#include <vector>

namespace toehold::study {

/// What one field is set to.
struct Setting {
    std::string field;
    double value = 0.0;
    friend bool operator==(const Setting&, const Setting&) = default;
};
using Settings = std::vector<Setting>;  ///< set one after the other

/// The stable name of a detail a study made: `height=36 in; tributary=48 in`. Empty: the detail itself.
[[nodiscard]] std::string id_of(const std::vector<Field>& fields, const Settings& settings);
/// The detail of this name, for a click on a chart's point.
[[nodiscard]] Made detail_of(const Subject& subject, const std::string& id);

/// The worst result of one check.
struct CheckRatio {
    std::string check;  ///< id
    format::Phrase title;
    model::PartId part;
    double ratio = 0.0;  ///< demand over capacity; infinite without a load path
    checks::Status status = checks::Status::holds;
    bool dimension = false;  ///< a least distance, which often stands at its limit; not a strength
};

/// What stops a detail, or what is nearest to stopping it.
struct Limit {
    std::string id;  ///< of a check or of a finding's rule; empty: nothing known
    format::Phrase title;
    model::PartId part;
    friend bool operator==(const Limit& one, const Limit& other) {
        return one.id == other.id && one.part == other.part;
    }
};

struct Judged {
    std::string detail;      ///< `id_of` its settings
    format::Phrase refusal;  ///< why there is no such detail, or no number for it; then nothing below is known
    review::Verdict verdict = review::Verdict::incomplete;
    std::vector<CheckRatio> checks;  ///< worst of each check, in order of id
    Limit limit;                     ///< the first cause, else the finding that forbids it, else the nearest strength
    /// The largest ratio of a strength, or of a dimension that fails; absent: there is none with a number.
    std::optional<CheckRatio> governing;
    std::vector<CheckRatio> no_path;  ///< those without a load path, whose ratio has no number

    /// Of the governing check; infinite where a check has no load path; absent: not known, or nothing has a number.
    [[nodiscard]] std::optional<double> ratio() const;
    [[nodiscard]] bool known() const { return refusal.empty(); }
    [[nodiscard]] bool holds() const { return known() && verdict == review::Verdict::adequate; }
};

/// Its rules asked, its demand found and checked. Never throws for what the detail is. `kept`, here and below, is what
/// its thread keeps from detail to detail; nullptr: nothing.
[[nodiscard]] Judged judge(const catalog::Resolved& resolved, demand::Kept* kept = nullptr);
/// The same where the demand is known already.
[[nodiscard]] Judged judge(const catalog::Resolved& resolved, demand::Outcome outcome);
/// Of a detail set so.
[[nodiscard]] Judged judge(const Subject& subject, const std::vector<Field>& fields, const Settings& settings,
                           demand::Kept* kept = nullptr);

using search::Run;

}  // namespace toehold::study
