#pragma once
// What a check gives back: data, never printed text. Screen, report and JSON show the same steps.
#include "format/phrase.h"
#include "model/part.h"

#include <optional>
#include <string>
#include <vector>

namespace toehold::checks {

/// Where the value of a step comes from.
enum class Origin {
    derived,   ///< worked out, from other steps or in a way the formula says
    file,      ///< the detail's file, or measured from what it describes
    given,     ///< a table, a rule, a catalog or a report, which the clause names
    demanded,  ///< the demand on the detail
};

/// One line of worked arithmetic a reviewer can follow by hand. What kind of line it is says `origin`; `formula` and
/// `clause` are for people, and nothing compares them.
struct Step {
    std::string symbol;      ///< `W'`, `F_c,perp'`: plain text; `_` opens a subscript
    format::Phrase meaning;  ///< what it is, in words
    std::string formula;     ///< in symbols, with numbers where short; or in words how a value was chosen
    double value = 0.0;
    std::string unit;    ///< `lb`, `in`, `psi`, `lb/in`, ``
    std::string clause;  ///< standard and clause, or `input`, `demand`, `common practice`
    Origin origin = Origin::derived;
    bool as_is = false;  ///< the formula says nothing beyond the origin
    friend bool operator==(const Step&, const Step&) = default;
};

/// A value of the file, as it is there: formula `given`, clause `input`.
[[nodiscard]] Step from_file(std::string symbol, format::Phrase meaning, double value, std::string unit);
/// A value of a table, a catalog or a report, as it is there: formula `given`.
[[nodiscard]] Step given(std::string symbol, format::Phrase meaning, double value, std::string unit,
                         std::string clause);
/// A value of the demand, as it is there: formula and clause `demand`.
[[nodiscard]] Step demanded(std::string symbol, format::Phrase meaning, double value, std::string unit);

enum class Status {
    holds,             ///< ratio <= 1
    fails,             ///< ratio > 1
    no_path,           ///< nothing there to resist the demand
    missing_evidence,  ///< the file does not give what the check needs; nothing is guessed
};

/// The link of the load path a check stands for: from one thing to the next, by what joins them.
struct Link {
    model::PartId from = {}, to = {};
    format::Phrase by;  ///< `lag screw threads`
    friend bool operator==(const Link&, const Link&) = default;
};

struct CheckResult {
    std::string id;        ///< of the check; filled in by the registry's runner when left empty
    format::Phrase title;  ///< of the check; filled in by the registry's runner when left empty
    model::PartId part;    ///< what was checked
    std::string clause;    ///< main clause with edition
    double demand = 0.0;
    double capacity = 0.0;
    std::string unit;    ///< of demand and capacity
    double ratio = 0.0;  ///< demand / capacity; infinity where capacity is 0 and demand is not
    Status status = Status::holds;
    std::optional<double> direction_deg;  ///< of the governing push, where direction matters
    std::optional<Link> link;
    format::Phrase note;  ///< one sentence where the number alone misleads; may be empty
    std::vector<Step> steps;
    /// Which of a check's several results on one part, in a stable word: `edge`, `end`, `spacing`. Mostly empty.
    std::string aspect = {};
    /// The loads whose duration the result is for, where the detail has loads of several; else empty.
    format::Phrase under = {};
};

enum class Severity {
    fails,    ///< the detail may not be accepted as it is: verdict inadequate
    missing,  ///< cannot be accepted on what is described: verdict incomplete
    caution,  ///< to be read; does not turn the verdict
};

/// Where a failing finding stands among the causes of a failure, first to last.
enum class Cause {
    geometry,   ///< the parts do not go together as drawn: before any force
    load_path,  ///< the load path ends there: before the checks that then fail
    beside,     ///< beside what the checks find: protection, evidence, loads
};

struct Finding {
    std::string id;  ///< of its rule; filled in by the runner when left empty
    Severity severity = Severity::caution;
    std::string clause;           ///< with edition, or `common practice`; filled in by the runner when left empty
    format::Phrase message;       ///< what is wrong and what would mend it
    model::PartId part = {};      ///< what it is about
    format::Phrase title = {};    ///< of its rule; filled in by the runner when left empty
    Cause cause = Cause::beside;  ///< of its rule; filled in by the runner
};

/// What a run of the checks is asked for.
enum class Asked {
    numbers,   ///< every result with its numbers
    failures,  ///< what fails, with the same numbers; of what holds no more than that it does, where that is cheaper
};

/// ratio and status from demand and capacity; demand within 1e-9 of 0 on no capacity holds.
void conclude(CheckResult& result);

}  // namespace toehold::checks
