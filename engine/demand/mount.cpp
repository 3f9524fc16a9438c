#include "demand/mount.h"

#include "demand/plate_on_deck/plate_preview.h"
#include "demand/plate_on_deck/plate_solver.h"
#include "demand/side_fastened/side_preview.h"
#include "demand/side_fastened/side_solver.h"

#include <array>
#include <utility>

namespace toehold::demand {
namespace {

template <class Kind>
std::unique_ptr<MountSolver> solver(const catalog::Resolved& resolved, const Sampling& sampling, Kept* kept) {
    return std::make_unique<Kind>(resolved, sampling, kept);
}

template <class Kind>
std::unique_ptr<MountPreview> preview(const catalog::Resolved& resolved) {
    return std::make_unique<Kind>(resolved);
}

/// One row for every kind of mount, in the order of `model::MountKind`.
struct MountDemand {
    std::unique_ptr<MountSolver> (*solver)(const catalog::Resolved&, const Sampling&, Kept*);
    std::unique_ptr<MountPreview> (*preview)(const catalog::Resolved&);
};
constexpr std::array<MountDemand, std::variant_size_v<model::Mount>> mounts{
    {{solver<PlateSolver>, preview<PlatePreview>}, {solver<SideSolver>, preview<SidePreview>}}};

const MountDemand& mount_of(const catalog::Resolved& resolved) { return mounts.at(resolved.detail.mount.index()); }

}  // namespace

std::unique_ptr<MountSolver> make_mount_solver(const catalog::Resolved& resolved, const Sampling& sampling,
                                               Kept* kept) {
    return mount_of(resolved).solver(resolved, sampling, kept);
}

std::unique_ptr<MountPreview> make_mount_preview(const catalog::Resolved& resolved) {
    return mount_of(resolved).preview(resolved);
}

Preview::Preview(const catalog::Resolved& resolved) : mount_(make_mount_preview(resolved)) {}
Preview::~Preview() = default;
Preview::Preview(Preview&&) noexcept = default;
Preview& Preview::operator=(Preview&&) noexcept = default;

const std::vector<LoadCase>& Preview::cases() const { return mount_->cases(); }
PolarEnvelope Preview::polar_envelope(int directions) { return mount_->polar_envelope(directions); }
std::size_t Preview::worst_case(double direction_rad) { return mount_->worst_case(direction_rad); }
PushResult Preview::push(std::size_t load_case, double direction_rad) { return mount_->push(load_case, direction_rad); }

}  // namespace toehold::demand
