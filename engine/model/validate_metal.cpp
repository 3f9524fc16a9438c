#include "model/validate_metal.h"

#include <algorithm>

namespace toehold::model {

using format::phrase;

void check_tube(ProblemList& problems, double width_in, double depth_in, double wall_in, double largest_side_in,
                double largest_wall_in) {
    problems.positive(phrase("width (in)"), width_in, largest_side_in);
    problems.positive(phrase("depth (in)"), depth_in, largest_side_in);
    problems.positive(phrase("wall (in)"), wall_in, largest_wall_in);
    if (!(wall_in < 0.5 * std::min(width_in, depth_in)))
        problems.add(phrase("the wall is not thinner than half the tube"),
                     phrase("a wall below {} in", brief(0.5 * std::min(width_in, depth_in))),
                     phrase("{} in", brief(wall_in)));
}

void check_certificate(ProblemList& problems, const Certificate& certificate) {
    problems.positive(phrase("yield (psi)"), certificate.yield_psi, 3e5);
    problems.positive(phrase("ultimate (psi)"), certificate.ultimate_psi, 3e5);
    if (certificate.yield_psi > certificate.ultimate_psi)
        problems.add(phrase("the yield is more than the ultimate strength"), phrase("a yield no more than ultimate"));
    if (certificate.source.empty())
        problems.add(phrase("the certificate has no source"), phrase("where the strengths come from"));
}

}  // namespace toehold::model
