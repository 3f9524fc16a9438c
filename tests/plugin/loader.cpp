// Plug-ins: a sound one is loaded and its checks run; every kind of bad file is refused with a sentence.
#include "plugin/loader.h"

#include "checks/run_check.h"
#include "plugin/shared_library_file.h"
#include "support/compare.h"
#include "support/example.h"
#include "support/file_bytes.h"
#include "support/temporary_folder.h"

#include <sys/stat.h>

using namespace toehold;
namespace fs = std::filesystem;
using checks::Status;
using plugin::LoadOutcome;
using test::bytes_of;
using test::put_bytes;
using test::run_check;

namespace {

const fs::path folder = TOEHOLD_TEST_PLUGINS;

fs::path module_file(const std::string& name) { return folder / ("libtest_plugin_" + name + ".so"); }

std::string error_of(const fs::path& file) {
    const LoadOutcome outcome = plugin::load(file);
    CHECK_FALSE(outcome.plugin);
    CHECK(format::english(outcome.error).find(file.string()) != std::string::npos);
    return format::english(outcome.error);
}

bool says(const std::string& error, const std::string& part) {
    INFO(error);
    return error.find(part) != std::string::npos;
}

std::size_t registered() { return checks::registered_checks().size(); }

/// Cases may run in one process or each in its own.
void load_once(const std::string& name) {
    const LoadOutcome outcome = plugin::load(module_file(name));
    INFO(format::english(outcome.error));
    CHECK((outcome.plugin || says(format::english(outcome.error), "which is there already")));
}

}  // namespace

TEST_CASE("A sound plug-in's checks run beside the engine's own", "[unit]") {
    load_once("sound");
    const auto resolved = test::example_resolved();
    const auto demand = test::example_demand(resolved, {1500.0, 0.0, 50.0}, {});
    const auto results = run_check("sample-anchors", resolved, demand);
    REQUIRE(results.size() == 4);
    CHECK(results[0].part == model::anchor_part("A"));
    CHECK(results[0].id == "sample-anchors");
    CHECK(format::english(results[0].title) == "Anchors, sample");
    CHECK(results[0].clause == "house rule 1");
    CHECK(results[0].demand == 1500.0);
    CHECK_CLOSE(results[0].ratio, 0.5, 1e-12, 0.0);
    CHECK(results[0].status == Status::holds);
    REQUIRE(results[0].steps.size() == 2);
    CHECK(results[0].steps[0].origin == checks::Origin::demanded);
    CHECK(results[0].steps[1].value == 0.375);
    CHECK(results[0].steps[1].origin == checks::Origin::file);
    CHECK(results[0].steps[1].as_is);
    const auto plate = run_check("sample-plate", resolved, demand);
    REQUIRE(plate.size() == 1);
    CHECK(plate[0].part == model::PartId{model::PartKind::plate});
    CHECK_CLOSE(plate[0].ratio, 0.25 / 0.375, 1e-12, 0.0);
}

TEST_CASE("A plug-in of the interface's first version is loaded and served as before", "[unit]") {
    load_once("first_version");
    const auto resolved = test::example_resolved();
    const auto demand = test::example_demand(resolved, {1500.0, 0.0, 50.0}, {});
    const auto results = run_check("first-anchors", resolved, demand);
    REQUIRE(results.size() == 4);
    CHECK(model::key(results[3].part) == "D");
    CHECK(results[3].part == model::PartId{model::PartKind::plug_in, "D"});
    CHECK(results[3].demand == 1500.0);
    CHECK(results[3].steps.at(1).value == 0.375);
    CHECK(results[3].steps[1].origin == checks::Origin::derived);
    CHECK_CLOSE(run_check("first-plate", resolved, demand).at(0).ratio, 0.25 / 0.375, 1e-12, 0.0);
}

TEST_CASE("A plug-in's check can say that evidence is missing", "[unit]") {
    load_once("sound");
    auto resolved = test::example_resolved();
    on_deck(resolved.detail).plate.thickness_in = 0.0;
    const auto result = run_check("sample-plate", resolved, test::example_demand(resolved, {}, {})).at(0);
    CHECK(result.status == Status::missing_evidence);
    CHECK(format::english(result.note) == "no thickness");
}

TEST_CASE("The same plug-in twice is refused and changes nothing", "[bad-input]") {
    load_once("sound");
    const std::size_t before = registered();
    CHECK(says(error_of(module_file("sound")), "sample-anchors, which is there already"));
    CHECK(registered() == before);
}

TEST_CASE("A check that goes wrong inside a plug-in leaves a review incomplete, not broken", "[bad-input]") {
    load_once("bad_runs");
    const auto resolved = test::example_resolved();
    const auto demand = test::example_demand(resolved, {}, {});
    for (const char* id : {"faulty-gives-up", "faulty-null", "faulty-number", "faulty-throws"}) {
        INFO(id);
        const auto results = run_check(id, resolved, demand);
        REQUIRE(results.size() == 1);
        CHECK(results[0].status == Status::missing_evidence);
        CHECK_FALSE(results[0].note.empty());
    }
    // Bytes that are no text are replaced, so that every output can print them.
    const auto bytes = run_check("faulty-bytes", resolved, demand);
    CHECK(model::key(bytes.at(0).part) == "\xEF\xBF\xBD\xEF\xBF\xBD");
    CHECK(bytes.at(0).status == Status::no_path);
}

TEST_CASE("A library that is no plug-in, or one for another version, is refused", "[bad-input]") {
    const std::size_t before = registered();
    CHECK(says(error_of(module_file("no_entry")), "does not export toehold_plugin_entry"));
    CHECK(says(error_of(module_file("no_table")), "gives no table"));
    CHECK(says(error_of(module_file("other_version")), "version 999"));
    CHECK(says(error_of(module_file("other_sizes")), "other structures"));
    CHECK(says(error_of(module_file("no_checks")), "brings no checks"));
    CHECK(says(error_of(module_file("bad_id")), "without a proper id"));
    CHECK(says(error_of(module_file("null_text")), "leaves parts"));
    CHECK(says(error_of(module_file("entry_throws")), "ends in an exception"));
    // The first check of this one is sound, the second is there already: neither may stay.
    CHECK(says(error_of(module_file("taken_id")), "plate-bending, which is there already"));
    CHECK(registered() == before);
}

TEST_CASE("What is no whole library is refused before the system maps it", "[bad-input]") {
    CHECK(says(error_of(folder / "not-there.so"), "does not exist"));
    CHECK(says(error_of(folder), "is a folder"));
    const test::TemporaryFile file("file", "");
    CHECK(says(error_of(file.path()), "is empty"));
    put_bytes(file.path(), "<base-detail/>");
    CHECK(says(error_of(file.path()), "is not a shared library"));
    put_bytes(file.path(),
              "\x7f"
              "ELF");
    CHECK(says(error_of(file.path()), "is not a shared library"));
    const test::TemporaryFolder own;
    const fs::path pipe = own.path() / "pipe";
    REQUIRE(::mkfifo(pipe.c_str(), 0600) == 0);
    CHECK(says(error_of(pipe), "is not a regular file"));
    CHECK(says(error_of("/dev/zero"), "is not a regular file"));
}

TEST_CASE("A library cut short anywhere is refused", "[bad-input]") {
    // Mapped, such a file ends the process with a bus error.
    const std::string whole = bytes_of(module_file("sound"));
    REQUIRE(whole.size() > 1000);
    const test::TemporaryFile file("cut", "");
    for (std::size_t tenth = 1; tenth < 10; ++tenth) {
        put_bytes(file.path(), whole.substr(0, whole.size() * tenth / 10));
        INFO(tenth << " tenths");
        CHECK(says(error_of(file.path()), "is cut short"));
    }
    put_bytes(file.path(), whole.substr(0, whole.size() - 1));
    CHECK(says(error_of(file.path()), "is cut short"));
    CHECK(plugin::library_problem(module_file("sound")).empty());
}

TEST_CASE("Damaged headers are refused, whatever number stands in them", "[bad-input]") {
    const std::string whole = bytes_of(module_file("sound"));
    const test::TemporaryFile file("damaged", "");
    const auto with = [&](std::size_t offset, char byte, std::size_t count) {
        std::string bytes = whole;
        for (std::size_t index = 0; index < count; ++index) bytes.at(offset + index) = byte;
        put_bytes(file.path(), bytes);
        return format::english(plugin::library_problem(file.path()));
    };
    CHECK(says(with(4, 1, 1), "another kind of machine"));  // 32-bit
    CHECK(says(with(5, 2, 1), "another kind of machine"));  // other byte order
    CHECK(says(with(16, 2, 1), "not a shared library"));    // an old program
    CHECK(says(with(32, '\xff', 8), "is cut short"));       // program headers far beyond, near the wrap-round
    CHECK(says(with(40, '\xff', 8), "is cut short"));       // section headers likewise
    CHECK(says(with(56, 0, 2), "damaged"));                 // no program headers
    CHECK(says(with(56, '\xff', 2), "is cut short"));       // 65535 of them
}

TEST_CASE("A plain file name means the file in this folder, never one of the system's", "[bad-input]") {
    CHECK(says(error_of("libm.so.6"), "does not exist"));
}
