// The sheet for the wall: nothing over anything else and nothing cut off, read back by programs of others.
#include "paper/charts/chart_sheet.h"

#include "export/csv/study_csv.h"
#include "paper/issue.h"
#include "paper/read_back.h"
#include "paper/site/site_sample.h"
#include "support/invented_studies.h"

using namespace toehold;

namespace {

constexpr units::System systems[] = {units::System::us, units::System::si};

std::vector<study::AnyStudy> studies_of(const std::vector<study::Field>& fields) {
    const study::Field& height = *study::find_field(fields, "height");
    const study::MapAsked map = study::customary_map(fields);
    return {test::invented_sweep(height, study::customary_values(height), 1.2), test::invented_tornado(fields, 0.9),
            test::invented_map(map.across, map.up)};
}

}  // namespace

TEST_CASE("Every chart of every demo fits its sheet, on letter and on A4", "[property]") {
    for (const std::string& demo : test::demo_names()) {
        const catalog::Resolved resolved = test::shipped_detail(demo);
        for (const study::AnyStudy& study : studies_of(study::fields({resolved, test::shipped_catalog()}))) {
            for (const units::System system : systems) {
                INFO(demo << " " << study.index());
                const paper::Sheet sheet =
                    paper::chart_sheet(study, {resolved, "0123456789abcdef"}, test::issue_in(system));
                CHECK(test::overlaps(test::words_on(sheet)) == std::vector<std::string>{});
                CHECK(test::off_the_page(sheet) == std::vector<std::string>{});
            }
        }
    }
}

TEST_CASE("A chart becomes PDF, SVG, PNG and CSV, and nothing else", "[property]") {
    const catalog::Resolved resolved = test::shipped_detail("heron-landing-corner");
    const study::AnyStudy study = studies_of(study::fields({resolved, test::shipped_catalog()})).front();
    const paper::Studied studied{resolved, "0123456789abcdef"};
    const paper::Issue issue = test::issue_in(units::System::si);
    const std::string pdf = paper::chart_file(study, "pdf", studied, issue);
    CHECK(test::pdf_pages(pdf) == 1);
    const std::string text = test::pdf_text(pdf);
    CHECK(test::contains(text, "Demand over capacity against guard height"));
    CHECK(test::contains(text, "Heron Landing, base at a corner"));
    CHECK(test::contains(text, "1067"));
    CHECK_FALSE(test::contains(text, "42 in"));
    CHECK(test::contains(test::read_by("xmllint --format", paper::chart_file(study, "svg", studied, issue), "svg"),
                         "<svg"));
    CHECK(paper::chart_file(study, "png", studied, issue).substr(1, 3) == "PNG");
    CHECK(paper::chart_file(study, "csv", studied, issue) == exporting::sweep_csv(std::get<study::Sweep>(study)));
    CHECK_THROWS_AS(paper::chart_file(study, "doc", studied, issue), std::invalid_argument);
    CHECK(paper::chart_file(study, "svg", studied, issue) == paper::chart_file(study, "svg", studied, issue));
}
