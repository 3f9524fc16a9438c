#include "review/line/line_example.h"

#include "support/example.h"

namespace toehold::test {

LineExample line_example(bool sharing) {
    LineExample all;
    const catalog::Resolved resolved = example_resolved();
    all.project = model::project_of(resolved.detail);
    const std::string mount = all.project.mounts.front().id;
    all.project.posts.clear();
    for (int index = 0; index < 3; ++index) {
        model::PlacedPost post;
        post.id = "P" + std::to_string(index + 1);
        post.at = {48.0 * index, 0.0};
        post.mount = mount;
        all.project.posts.push_back(post);
        all.posts.push_back({post, resolved});
    }
    model::GuardLine line;
    line.id = "L1";
    line.posts = {"P1", "P2", "P3"};
    line.rail = model::Rail{model::RoundTube{1.66, 0.14, "steel"}, model::RailRun::continuous};
    line.sharing = sharing;
    all.rail = {
        *line.rail,
        catalog::Metal{"steel", "test steel", catalog::MetalKind::carbon_steel, 35000.0, 58000.0, 29e6, {}, {}, {}}};
    all.project.guard_lines = {line};
    return all;
}

demand::LineDemand made_up_demand() {
    demand::LineDemand demand;
    for (const double share : {0.8, 0.6, 0.8}) {
        demand::PostShares post;
        post.share.value = share;
        post.line_length_in.value = share == 0.6 ? 60.0 : 20.0;
        post.connection.push_across.value = share;
        post.connection.line_across.value = post.line_length_in.value;
        post.movement = {0.0, 0.0, 1e-3, 2e-3, 0.0};
        demand.posts.push_back(post);
    }
    demand.posts[0].share.span = 0;
    demand.posts[1].share.along_in = 48.0;
    demand.posts[2].share.span = 1;
    demand.posts[2].share.along_in = 48.0;
    for (int index = 0; index < 2; ++index) {
        demand::LineSpan span;
        span.push.moment_lb_in.value = 13.0;
        span.push.shear_lb.value = 0.9;
        span.movement = {4e-3, 0.0, 1e-3, 2e-3, 0.0};
        demand.spans.push_back(span);
    }
    return demand;
}

review::SolvedLine made_up_line(const LineExample& example) {
    review::SolvedLine line;
    line.line = &example.project.guard_lines.front();
    line.rail = &example.rail;
    line.posts = {0, 1, 2};
    line.spans = model::spans_of(example.project, *line.line);
    line.half_spans_in = {24.0, 48.0, 24.0};
    line.demand = made_up_demand();
    return line;
}

}  // namespace toehold::test
