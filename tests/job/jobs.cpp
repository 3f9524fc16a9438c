#include "jobs.h"

#include <fmt/format.h>

namespace toehold::test {
namespace {

using job::Job;
using job::Place;
using model::Occupancy;

const std::vector<job::PostOrder> posts = {{"2x2x3/16", "steel"},
                                           {"round 1.9x0.145", "steel"},
                                           {"2 1/2x2 1/2x1/4", "aluminum"},
                                           {"1 1/2x1 1/2", "stainless"},
                                           {"4x4", "wood"},
                                           {"6x6", "wood"}};

/// Each of these asks for another joist, another height or another answer, so that the list needs no fourth product.
void vary(Job& job, std::size_t number) {
    const std::vector<std::string> sizes = {"2x8", "2x10", "2x12"};
    const std::vector<double> spacings_in = {16.0, 12.0, 24.0};
    const bool even = number % 2 == 0;
    job.joist_size = sizes.at(number % sizes.size());
    job.joist_spacing_in = spacings_in.at(number / 2 % spacings_in.size());
    job.guard_height_in = even ? 36.0 : 42.0;
    if (number % 5 == 0) job.access_below = even;
    if (number % 7 == 0) job.species = "hem-fir";
    if (number % 4 == 0) job.joist_span_in = 84.0;
    if (number % 3 == 0) job.handrail = even;
}

Job job_of(Place place, const job::PostOrder& post, Occupancy occupancy, const char* boards) {
    Job job;
    job.place = place;
    job.post = post;
    job.occupancy = occupancy;
    job.decking = boards;
    if (job::needs_tributary_length(job)) job.tributary_length_in = 60.0;
    return job;
}

}  // namespace

std::vector<Job> all_jobs() {
    std::vector<Job> jobs;
    for (const Place place :
         {Place::between_joists, Place::over_a_joist, Place::beside_the_rim, Place::corner, Place::cantilever})
        for (const job::PostOrder& post : posts)
            for (const Occupancy occupancy : {Occupancy::one_and_two_family, Occupancy::limited, Occupancy::other})
                for (const char* boards : {"wood-southern-pine", "composite-generic"}) {
                    jobs.push_back(job_of(place, post, occupancy, boards));
                    vary(jobs.back(), jobs.size());
                }
    return jobs;
}

std::string words(const Job& job) {
    return fmt::format("place {}, {} {}, occupancy {}, {} in guard, {} at {} in, {}", static_cast<int>(job.place),
                       job.post.section, job.post.material, static_cast<int>(job.occupancy), job.guard_height_in,
                       job.joist_size, job.joist_spacing_in, job.decking);
}

}  // namespace toehold::test
