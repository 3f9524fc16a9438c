#pragma once
// Details in which every kind of part occurs at least once, each made from a demo detail or from the example of a post
// on the side by setting one field or two.
#include "editing/fields.h"

#include <string>
#include <vector>

namespace toehold::test {

struct Setting {
    std::string path, text;
};

struct Variant {
    std::vector<Setting> made_by;  ///< for messages; empty: the demo detail
    model::BaseDetail detail;
};

/// The shipped catalogs, and a second grade of Southern Pine for there to be a choice: invented, a copy of the first.
[[nodiscard]] const catalog::Catalog& field_catalog();

/// The first is the demo detail with its plate in it, the second the same with its plate from a document.
[[nodiscard]] std::vector<Variant> field_variants();

/// Set in US units, or the test fails.
[[nodiscard]] model::BaseDetail with(const model::BaseDetail& detail, const std::string& path, const std::string& text);
[[nodiscard]] const editing::Field* find_field(const std::vector<editing::Field>& fields, const std::string& path);
/// What the field shows, in US units; fails the test where there is none.
[[nodiscard]] std::string value_at(const model::BaseDetail& detail, const std::string& path);
/// Another text the field takes.
[[nodiscard]] std::string another_value(const editing::Field& field);

}  // namespace toehold::test
