#include "checks/basis/incising.h"

namespace toehold::checks {
namespace {

const char* reason(const catalog::LumberGrade& grade, const model::Basis& basis) {
    if (basis.incised) return *basis.incised ? "incised, as the file states" : "not incised, as the file states";
    switch (grade.incising) {
        case catalog::IncisedBy::species_needs_none:
            return "assumed not incised: the species is treated without";
        case catalog::IncisedBy::untreated:
            return "not incised: not treated";
        case catalog::IncisedBy::assumed:
            break;
    }
    return "assumed incised for its treatment";
}

}  // namespace

bool incised(const catalog::LumberGrade& grade, const model::Basis& basis) {
    return basis.incised.value_or(grade.incising == catalog::IncisedBy::assumed);
}

Step incising_step(resistance::MemberProperty property, const catalog::LumberGrade& grade, const model::Basis& basis) {
    return {"C_i",
            format::phrase("incising factor"),
            reason(grade, basis),
            resistance::member_incising(property, incised(grade, basis)),
            "",
            "NDS 2018 Table 4.3.8",
            Origin::given};
}

}  // namespace toehold::checks
