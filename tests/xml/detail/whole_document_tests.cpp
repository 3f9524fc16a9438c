// Random whole documents are written and read again: nothing a file can say is lost, in either mode.
#include "model/validate.h"
#include "support/random/detail.h"
#include "xml/samples.h"

#include <catch2/catch.hpp>

using namespace toehold;
using xml::Mode;

namespace {

/// What both modes make of what is written of the detail: `problems` are of the model alone.
void check_both_modes(const model::BaseDetail& detail, const std::filesystem::path& file) {
    const std::string text = xml::write_detail(detail);
    const xml::DetailRead lenient = xml::read_detail_text(text, file, Mode::lenient);
    RC_ASSERT(lenient.is_whole);
    RC_ASSERT(lenient.detail == detail);
    RC_ASSERT(xml::write_detail(*lenient.detail) == text);
    RC_ASSERT(lenient.problems.empty() == model::validate(detail).empty());
    const xml::DetailRead strict = xml::read_detail_text(text, file);
    RC_ASSERT(strict.problems == lenient.problems);
    RC_ASSERT(strict.detail == (lenient.problems.empty() ? lenient.detail : std::nullopt));
}

}  // namespace

TEST_CASE("whatever a file can say is written and read again whole, to the last digit", "[property]") {
    CHECK(rc::check([] { check_both_modes(*test::any_detail(), "detail.xml"); }));
}

TEST_CASE("whatever a file can say of a post on a member's side is written and read again whole", "[property]") {
    CHECK(rc::check([] { check_both_modes(*test::any_side_detail(), "detail.xml"); }));
}

TEST_CASE("a detail that can be built is written and read again by both modes", "[property]") {
    CHECK(rc::check([] {
        const model::BaseDetail detail = *test::sound_detail();
        RC_ASSERT(model::validate(detail).empty());
        check_both_modes(detail, "detail.xml");
    }));
}

TEST_CASE("a plate from another document comes with what else a file can say", "[property]") {
    const test::TemporaryFolder folder;
    CHECK(rc::check([&] {
        model::BaseDetail detail = *test::any_detail();
        model::Plate& plate = on_deck(detail).plate;
        plate = on_deck(*test::sound_detail()).plate;
        plate.id = "P1";
        test::put_bytes(folder.path() / "plates.xml", xml::write_plates({plate}));
        const std::string digest = xml::plate_sha256(plate);
        const bool is_pinned = *rc::gen::arbitrary<bool>();
        on_deck(detail).plate_reference = model::PlateReference{"plates.xml", "P1", is_pinned ? digest : "", digest};
        check_both_modes(detail, folder.path() / "detail.xml");
    }));
}
