// The rail's checks in the list of all: a lone detail has no rail, so that here they find nothing; the review of a line
// asks the functions of rail.h.
#include "checks/rail/rail.h"
#include "checks/registry.h"

namespace toehold::checks {
namespace {

using format::phrase;

std::vector<CheckResult> none_of_a_lone_post(const CheckInput&) { return {}; }

const RegisterCheck bending_listed{
    {"rail-bending", phrase("Rail bending"), "AISC 360-16 F; NDS 2018 3.9.2",
     phrase("The rail of a guard line between its posts, under the push at any point and the load along it."),
     none_of_a_lone_post}};
const RegisterCheck shear_listed{{"rail-shear", phrase("Rail shear"), "AISC 360-16 G4, G5; NDS 2018 3.4.2",
                                  phrase("The rail of a guard line beside its posts."), none_of_a_lone_post}};
const RegisterCheck connection_listed{
    {"rail-connection", phrase("Rail connection"), "evaluation report",
     phrase("The rail's connection to a post or a wall, against its reported allowable forces."), none_of_a_lone_post}};
const RegisterCheck deflection_listed{
    {"rail-deflection", phrase("Deflection at mid-rail"), rail_deflection_clause(),
     phrase("Rail, posts, bases and framing under the push alone, where the file invokes a limit."),
     none_of_a_lone_post}};

}  // namespace
}  // namespace toehold::checks
