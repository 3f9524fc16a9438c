#pragma once
// Random whole details for properties: every element and every optional attribute of the format, awkward words and
// numbers with all their digits.
#include "model/base_detail.h"

#include <rapidcheck.h>

#include <iosfwd>

namespace toehold::test {

/// What a file can say, however little sense it makes: `model::validate` may refuse it. It carries its plate itself.
[[nodiscard]] rc::Gen<model::BaseDetail> any_detail();
/// The same of a post fastened to the side of a member.
[[nodiscard]] rc::Gen<model::BaseDetail> any_side_detail();
/// What can be built and computed: `model::validate` has nothing to say.
[[nodiscard]] rc::Gen<model::BaseDetail> sound_detail();
/// One of the sound ones: the same seed gives the same detail.
[[nodiscard]] model::BaseDetail random_detail(unsigned seed);

}  // namespace toehold::test

namespace toehold::model {

/// For RapidCheck's report of a counterexample.
void showValue(const BaseDetail& detail, std::ostream& stream);

}  // namespace toehold::model
