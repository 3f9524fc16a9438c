#pragma once
// Every field of the model by the trade's name, as text in the reader's units, and back: what the properties panel
// shows. Values are text as a person types them (`3 3/8`, `86
// mm`): a number without a unit counts in the reader's unit, and the field shows it with that unit at once.
#include "catalog/catalog.h"
#include "format/phrase.h"
#include "model/base_detail.h"
#include "model/part.h"
#include "units/quantity.h"

#include <optional>
#include <string>
#include <vector>

namespace toehold::editing {

enum class FieldKind { text, quantity, number, count, yes_no, choice };

struct Choice {
    std::string value;     ///< what the model holds: a catalog id or a word of the format
    format::Phrase label;  ///< for people, searchable
};

struct Field {
    std::string path;      ///< unique: `post/width`, `plate/hole[A]/x`, `anchors[1]/length`, `framing/block[B1]/depth`
    model::PartId part;    ///< whole; none: of the whole detail
    format::Phrase group;  ///< heading: `Guard`, `Post`, `Plate`, `Hole A`, `Anchors A B C D`, `Block B1`, `Basis` ...
    format::Phrase label;
    format::Phrase help;  ///< what it means and, where it is left open, what is taken instead
    FieldKind kind = FieldKind::text;
    units::Kind quantity = units::Kind::length;
    std::string value;            ///< as shown; empty: not stated
    bool may_be_empty = false;    ///< not stating it is allowed; `help` says what that means
    std::vector<Choice> choices;  ///< of a choice, and suggestions of a text
    /// Further parts it concerns: of a fastener, the other anchors of its group; of the joists' section, every joist.
    std::vector<model::PartId> also = {};
};

[[nodiscard]] std::vector<Field> fields(const model::BaseDetail& detail, const catalog::Catalog& catalog,
                                        units::System system);

struct FieldEdit {
    std::optional<model::BaseDetail> detail;  ///< absent: refused
    format::Phrase step;                      ///< `Change Post: Width`
    format::Phrase refusal;                   ///< one sentence: what would be accepted
};

/// The field with that path set from text. An unknown path, or text that cannot be read, is refused. What names a part
/// whose id changes follows it; a kind that is switched starts with values that the field's help names.
[[nodiscard]] FieldEdit set_field(const model::BaseDetail& detail, const catalog::Catalog& catalog,
                                  units::System system, const std::string& path, const std::string& text);

/// A quantity as a field shows it: US lengths as fractions of 1/32 in, or as whole or half millimeters where they are
/// that and no such fraction (`86 mm` stays `86 mm`), else decimals; SI the other way about.
[[nodiscard]] std::string shown(double value, units::Kind kind, units::System system);
/// Text with or without a unit; absent: cannot be read as that kind.
[[nodiscard]] std::optional<double> typed(const std::string& text, units::Kind kind, units::System system);

}  // namespace toehold::editing
