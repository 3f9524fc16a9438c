#pragma once
// How far computed forces may be from the true ones, as coefficients of variation: Probabilistic Model Code of the
// Joint Committee on Structural Safety, part 3, model uncertainties (read in its public repository; mean 1, lognormal).
// A prediction lets every link of a base share in one such factor, since one model found all its forces.

namespace toehold::resistance::ultimate {

inline constexpr double plate_force_variation = 0.10, frame_moment_variation = 0.10, frame_shear_variation = 0.10,
                        plate_moment_variation = 0.20;

}  // namespace toehold::resistance::ultimate
