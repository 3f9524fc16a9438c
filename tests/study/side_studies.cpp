// Studies of a post on a member's side: its fields change what they name and nothing else, and a load test is foretold
// or refused with a sentence.
#include "study/proof_load/proof_load.h"
#include "study/study.h"

#include "model/side_geometry.h"
#include "support/compare.h"
#include "support/shipped.h"
#include "support/side_detail.h"

#include <catch2/catch.hpp>

using namespace toehold;

namespace {

double gap_in(const model::BaseDetail& detail) {
    const model::SideJoint joint = model::side_joint(detail);
    return model::to_near_face_in(joint, model::side_member(detail).value()) - joint.to_member_face_in;
}

}  // namespace

TEST_CASE("every field of a side is taken at its own value and at its ends, the member against the post",
          "[property]") {
    for (const model::BaseDetail& detail : {test::side_detail(), test::inside_detail(), test::bracket_detail()}) {
        const catalog::Resolved resolved = test::resolved_by_shipped(detail);
        const std::vector<study::Field> fields = study::fields({resolved, test::shipped_catalog()});
        for (const char* id : {"upper-fasteners", "lower-fasteners", "post-bottom", "decking", "anchor-size"})
            CHECK(study::find_field(fields, id) != nullptr);
        CHECK(study::find_field(fields, "plate-thickness") == nullptr);
        CHECK(study::find_field(fields, "weld-leg") == nullptr);
        CHECK((study::find_field(fields, "bracket-thickness") != nullptr) == on_side(detail).bracket.has_value());
        for (const study::Field& field : fields) {
            INFO(detail.name << ": " << field.id);
            if (!field.now) continue;
            const study::Made same = field.set(detail, *field.now);
            REQUIRE(same.detail);
            for (const double end : {field.range.least, field.range.most}) {
                const study::Made made = field.set(detail, end);
                CHECK(made.detail.has_value() == made.refusal.empty());
                if (made.detail) CHECK_CLOSE(gap_in(*made.detail), 0.0, 0.0, 1e-9);
            }
        }
    }
}

TEST_CASE("a row of fasteners goes where its field says", "[unit]") {
    model::BaseDetail detail = test::side_detail();
    test::add_ties(detail);
    const catalog::Resolved resolved = test::resolved_by_shipped(detail);
    const std::vector<study::Field> fields = study::fields({resolved, test::shipped_catalog()});
    const study::Made made = study::find_field(fields, "upper-fasteners")->set(detail, 1.5);
    REQUIRE(made.detail);
    CHECK(on_side(*made.detail).places.front().below_top_in == 1.5);
    CHECK(on_side(*made.detail).places.back().below_top_in == 7.0);
    CHECK(on_side(*made.detail).ties.front().below_top_in == 1.5);
    CHECK_FALSE(study::find_field(fields, "upper-fasteners")->set(detail, 7.0).detail);
}

TEST_CASE("a load test of a side is foretold or refused with a sentence", "[unit]") {
    mechanics::Drawing drawing;
    drawing.samples = 2000;
    for (const model::BaseDetail& detail : {test::side_detail(), test::bracket_detail()}) {
        INFO(detail.name);
        const study::ProofLoadOutcome outcome = study::proof_load(test::resolved_by_shipped(detail), drawing);
        CHECK(outcome.proof.has_value() == outcome.failure.empty());
        if (!outcome.proof) continue;
        CHECK(format::english(outcome.proof->datum) == "the top of the member the post is fastened to");
        CHECK(outcome.proof->in_service.mean_push_lb > 0.0);
    }
    CHECK_FALSE(study::anchor_reach({test::resolved_by_shipped(test::side_detail()), test::shipped_catalog()}, "U"));
}
