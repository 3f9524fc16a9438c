// The guard's, the wind's, the test's and the deck's loads: read in the engine's units, and the same after writing.
#include "model/validate.h"
#include "support/compare.h"
#include "xml/samples.h"

using namespace toehold;

namespace {

model::BaseDetail read(const std::string& text) {
    const xml::DetailRead found = xml::read_detail_text(text, "detail.xml");
    INFO(test::sentences(found.problems));
    REQUIRE(found.detail);
    return *found.detail;
}

model::BaseDetail again(const model::BaseDetail& detail) { return read(xml::write_detail(detail)); }

}  // namespace

TEST_CASE("Occupancy, tributary length and handrail of a guard", "[unit]") {
    std::string text = test::changed(test::plain_detail(), "<guard height=\"42 in\"",
                                     "<guard height=\"42 in\" tributary-length=\"6 ft\" handrail=\"no\"");
    const model::BaseDetail detail = read(text);
    CHECK(detail.guard.tributary_length_in == 72.0);
    CHECK(detail.guard.handrail == false);
    CHECK(again(detail) == detail);
    model::BaseDetail limited = detail;
    limited.guard.occupancy = model::Occupancy::limited;
    limited.guard.handrail = true;
    CHECK(again(limited) == limited);
}

TEST_CASE("Wind, proof test, directions, edition and deck load survive writing and reading", "[property]") {
    model::BaseDetail detail = read(test::plain_detail());
    detail.loads.wind = model::WindLoad{22.5, true, 17.3, 36.0, 0.35, 20.25, false};
    detail.loads.proof_push_lb = 500.0;
    detail.loads.directions = model::Directions::across;
    detail.framing.deck = {10.1, 40.7};
    for (const auto code :
         {model::BuildingCode::irc_2018, model::BuildingCode::irc_2021, model::BuildingCode::irc_2024,
          model::BuildingCode::ibc_2018, model::BuildingCode::ibc_2021, model::BuildingCode::ibc_2024}) {
        detail.basis.code = code;
        CHECK(again(detail) == detail);
    }
    model::BaseDetail plain = detail;
    plain.loads.wind = model::WindLoad{};
    plain.loads.wind->pressure_psf = 20.0;
    CHECK(again(plain) == plain);
}

TEST_CASE("A pressure in kilopascals and an area in square meters", "[unit]") {
    // 1 kPa = 20.8854 psf; 1 m2 = 10.7639 sq ft (NIST SP 811)
    model::BaseDetail detail = read(test::plain_detail());
    detail.loads.wind = model::WindLoad{};
    detail.loads.wind->pressure_psf = 20.0;
    detail.loads.wind->area_ft2 = 10.0;
    std::string text = test::changed(xml::write_detail(detail), "20 psf", "1 kPa");
    const model::BaseDetail metric = read(test::changed(text, "10 ft2", "1 m2"));
    CHECK_CLOSE(metric.loads.wind->pressure_psf, 20.8854, 1e-5, 0.0);
    CHECK_CLOSE(metric.loads.wind->area_ft2.value(), 10.7639, 1e-5, 0.0);
}

TEST_CASE("A wind beyond reason is refused with what is accepted", "[bad-input]") {
    model::BaseDetail detail = read(test::plain_detail());
    detail.loads.wind = model::WindLoad{};
    detail.loads.wind->pressure_psf = 20.0;
    detail.loads.wind->solid_ratio = 1.5;
    CHECK(model::validate(detail).size() == 1);
    detail.loads.wind->solid_ratio = 1.0;
    CHECK(model::validate(detail).empty());
    detail.loads.proof_push_lb = 1e6;
    CHECK(model::validate(detail).size() == 1);
}
