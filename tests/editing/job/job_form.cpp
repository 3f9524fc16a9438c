#include "editing/job/job_form.h"

#include "editing/document.h"
#include "support/file_bytes.h"
#include "support/shipped.h"
#include "support/temporary_folder.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <string>

using namespace toehold;
using editing::JobForm;

namespace {

const job::Question& question(const JobForm& form, const std::string& id) {
    const auto& all = form.questions();
    const auto found = std::find_if(all.begin(), all.end(), [&](const auto& one) { return one.id == id; });
    REQUIRE(found != all.end());
    return *found;
}

}  // namespace

TEST_CASE("the answers every job begins with make a detail", "[unit]") {
    const JobForm form(test::shipped_catalog());
    REQUIRE(form.started());
    CHECK_FALSE(form.started()->assumed.empty());
    CHECK(form.why_not().second.empty());
}

TEST_CASE("an answer that is refused stays as it was typed, and makes nothing till it is mended", "[bad-input]") {
    JobForm form(test::shipped_catalog());
    const job::Question& height = question(form, "height");
    form.take(height, "tall");
    CHECK(form.answer(height) == "tall");
    CHECK_FALSE(form.refusal(height).empty());
    CHECK_FALSE(form.started());
    CHECK(form.why_not().first == height.title);
    form.take(height, "42 in");
    CHECK(form.refusal(height).empty());
    REQUIRE(form.started());
    CHECK(form.started()->detail.guard.height_in == 42.0);
}

TEST_CASE("every place of the post can be looked at beside the one chosen", "[unit]") {
    const JobForm form(test::shipped_catalog());
    const job::Question& place = question(form, "place");
    CHECK(place.choices.size() == 6);
    for (const job::Choice& choice : place.choices) {
        INFO(choice.answer);
        const std::optional<job::Started> other = form.with(place, choice.answer);
        REQUIRE(other);
        CHECK((other->detail == form.started()->detail) == (choice.answer == form.answer(place)));
    }
}

TEST_CASE("an assumed value is one until the detail has another", "[unit]") {
    const JobForm form(test::shipped_catalog());
    const job::Started& started = *form.started();
    const std::vector<bool> before = editing::still_assumed(started, started.detail);
    CHECK(std::all_of(before.begin(), before.end(), [](bool still) { return still; }));
    model::BaseDetail changed = started.detail;
    REQUIRE(changed.framing.joists);
    changed.framing.joists->species = "hem-fir";
    const std::vector<bool> after = editing::still_assumed(started, changed);
    REQUIRE(after.size() == started.assumed.size());
    std::size_t left = 0;
    for (std::size_t at = 0; at < after.size(); ++at) {
        if (after[at]) continue;
        ++left;
        CHECK(started.assumed[at].element == "framing/joists");
        CHECK(started.assumed[at].attribute == "species");
    }
    CHECK(left == 1);
}

TEST_CASE("a started detail is saved with a comment for each value still assumed, and reads back", "[unit]") {
    const JobForm form(test::shipped_catalog());
    const job::Started& started = *form.started();
    model::BaseDetail changed = started.detail;
    changed.framing.joists->species = "hem-fir";
    const test::TemporaryFolder folder;
    const std::filesystem::path file = folder.path() / "started.xml";
    REQUIRE(editing::save_detail(file, changed, &started).stamp);
    const std::string text = test::bytes_of(file);
    std::size_t comments = 0;
    for (std::size_t at = text.find("<!-- assumed"); at != std::string::npos; at = text.find("<!-- assumed", at + 1))
        ++comments;
    CHECK(comments + 1 == started.assumed.size());
    const editing::Opened opened = editing::open_detail(file, test::shipped_catalog());
    REQUIRE(opened.detail);
    CHECK(*opened.detail == changed);
}
