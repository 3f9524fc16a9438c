#include "checks/run_check.h"
#include "support/example.h"

#include <algorithm>
#include <functional>
#include <map>
#include <set>

using namespace toehold;
using checks::Check;
using checks::Status;

namespace {

const Check* find(const std::string& id) {
    const auto& all = checks::registered_checks();
    const auto found = std::find_if(all.begin(), all.end(), [&](const Check& check) { return check.id == id; });
    return found == all.end() ? nullptr : &*found;
}

bool fails(const checks::CheckResult& result) {
    return result.status == Status::fails || result.status == Status::no_path;
}

}  // namespace

TEST_CASE("What a check says its failure causes are checks that exist, and no cause is its own effect", "[unit]") {
    std::function<void(const Check&, std::set<std::string>)> follow = [&](const Check& check,
                                                                          std::set<std::string> before) {
        INFO(check.id);
        REQUIRE(before.insert(check.id).second);
        for (const std::string& id : check.causes) {
            INFO(id);
            REQUIRE(find(id) != nullptr);
            follow(*find(id), before);
        }
    };
    for (const Check& check : checks::registered_checks()) follow(check, {});
}

TEST_CASE("A combined check never passes where one of its parts fails", "[property]") {
    const std::set<std::string> parts = {"anchor-withdrawal", "anchor-lateral", "anchor-steel-tension",
                                         "anchor-steel-shear"};
    const catalog::Resolved resolved = test::example_resolved();
    for (const double tension_lb : {0.0, 300.0, 3000.0, 30000.0}) {
        for (const double shear_lb : {0.0, 30.0, 300.0, 30000.0}) {
            const demand::Demand demand = test::example_demand(resolved, {tension_lb, 0.0, shear_lb}, {});
            std::map<std::string, std::map<model::PartId, bool>> failed;
            for (const Check& check : checks::registered_checks()) {
                if (check.id.rfind("anchor", 0) != 0) continue;
                for (const auto& result : checks::run(check, {resolved, demand}))
                    failed[check.id][result.part] = fails(result);
            }
            for (const std::string& id : parts) {
                for (const std::string& effect : find(id)->causes) {
                    for (const auto& [part, fails_there] : failed[id]) {
                        INFO(id << " " << model::key(part) << " " << tension_lb << " " << shear_lb);
                        CHECK((!fails_there || failed[effect].at(part)));
                    }
                }
            }
        }
    }
}

TEST_CASE("What cannot be built stands before any check among the causes, and a path that ends before those it breaks",
          "[unit]") {
    const std::set<std::string> geometry = {
        "anchor-inside-post", "bolt-too-short",    "gusset-in-the-way",  "head-on-weld",     "hole-in-post",
        "hole-oversize",      "hole-tight",        "holes-too-close",    "lower-plate-fit",  "packing-fit",
        "notched-post",       "washer-off-plate",  "washers-overlap",    "wrench-clearance", "weld-larger-than-wall",
        "side-head-on-weld",  "side-notched-post", "side-nut-in-the-way"};
    std::map<checks::Cause, std::set<std::string>> found;
    for (const checks::FindingRule& rule : checks::registered_findings()) found[rule.cause].insert(rule.id);
    CHECK(found[checks::Cause::geometry] == geometry);
    CHECK(found[checks::Cause::load_path] == std::set<std::string>{"decking-only", "no-path-to-joists",
                                                                   "side-end-grain", "side-no-bottom",
                                                                   "side-one-member", "stub-not-held"});
}
