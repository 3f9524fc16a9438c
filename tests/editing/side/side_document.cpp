// The file and the recovery copy of a post on the side.
#include "editing/document.h"

#include "editing/samples.h"
#include "support/temporary_folder.h"

#include <catch2/catch.hpp>

using namespace toehold;

TEST_CASE("a post on the side is saved, opened, kept against a crash and opened from the copy", "[process]") {
    const test::TemporaryFolder folder;
    for (const model::BaseDetail& detail : {test::post_on_side(), test::tube_on_side()}) {
        INFO(detail.name);
        const std::filesystem::path file = folder.path() / "side.xml";
        CHECK(editing::as_saved(file, detail) == detail);
        const editing::Saved saved = editing::save_detail(file, detail);
        INFO(saved.refusal);
        REQUIRE(saved.stamp);
        const editing::Opened opened = editing::open_detail(file, test::shipped_catalog());
        REQUIRE(opened.detail);
        CHECK(opened.problems.empty());
        CHECK(*opened.detail == detail);
        const std::filesystem::path copies = folder.path() / "recovery";
        REQUIRE(editing::keep_copy(copies, 1, file, detail));
        const editing::RecoveryCopy copy{std::filesystem::directory_iterator(copies)->path(), file, detail.name, {}};
        const editing::Opened back = editing::open_copy(copy, test::shipped_catalog());
        REQUIRE(back.detail);
        CHECK(*back.detail == detail);
        editing::drop_copy(copies, 1);
    }
}
