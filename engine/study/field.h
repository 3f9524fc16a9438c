#pragma once
// One scalar input of a detail, with a name, a unit and a sensible range: what a chart runs over.
//
// A value is in the engine's unit of the field (in, lb, lb/ft, psi/in, lb/in). Setting a field changes what must follow
// it, so that the detail still fits together: a larger plate keeps its anchors' edge distance, a larger anchor gets a
// larger hole and washer, joists at another spacing take their blocks with them. The field's `help` says which.
#include "catalog/catalog.h"
#include "catalog/resolve.h"
#include "format/phrase.h"
#include "units/quantity.h"

#include <functional>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace toehold::study {

/// A detail to be studied. Both must outlive every field made of them.
struct Subject {
    const catalog::Resolved& resolved;
    const catalog::Catalog& catalog;
};

/// A detail changed, or why there is none such.
struct Made {
    std::optional<model::BaseDetail> detail;
    format::Phrase refusal;  ///< one sentence; empty: there is one
};

/// A size one can buy.
struct Size {
    double value = 0.0;
    std::string name;  ///< `2x10`, `3/8 in lag screw`
};

struct Range {
    double least = 0.0, most = 0.0;
};

struct Field {
    std::string id;             ///< lower case with hyphens: `height`, `plate-thickness`
    format::Phrase name;        ///< a few words for an axis: `guard height`
    format::Phrase help;        ///< one sentence: what it sets, and what follows it
    std::string unit = "in";    ///< the engine's, as `format::in_system` takes it
    std::optional<double> now;  ///< in the detail it was made of; absent: not specified there
    Range range;                ///< sensible about `now`, > 0; a value outside may still be asked for
    double step = 1.0;          ///< a customary step over that range; of sizes: 0
    std::vector<Size> sizes;    ///< in order of value; not empty: no other values
    /// Of a detail whose model is valid another such, or why there is none.
    std::function<Made(const model::BaseDetail&, double value)> set;
};

/// Those the detail has, from the guard down.
[[nodiscard]] std::vector<Field> fields(const Subject& subject);
/// nullptr: it has none of this id.
[[nodiscard]] const Field* find_field(const std::vector<Field>& fields, std::string_view id);

/// `30 in`, `3/8 in lag screw`: for people, in their units.
[[nodiscard]] std::string value_words(const Field& field, double value, units::System system);
/// The same without the unit, for the ticks of an axis that has it: `30`, `3/8`, `2x10`.
[[nodiscard]] std::string value_figure(const Field& field, double value, units::System system);

/// A field and the values it is to take, in rising order, at least two.
struct Asked {
    Field field;
    std::vector<double> values;
};
struct ValuesRead {
    std::optional<Asked> asked;
    format::Phrase refusal;  ///< one sentence with what is accepted; empty: read
};
/// `height`, `height=30..48`, `height=30..48/2`, `plate-thickness=1/4 in..3/4 in/1/8 in`, `anchor-size=3/8,1/2`. A bare
/// number is in the field's own unit. Of sizes a range takes every one between its ends, and no step.
[[nodiscard]] ValuesRead read_values(const std::vector<Field>& fields, std::string_view text);

/// The field's range by its step, or its sizes; at least two.
[[nodiscard]] std::vector<double> customary_values(const Field& field);

}  // namespace toehold::study
