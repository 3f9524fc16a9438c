#pragma once
// What one worker keeps from detail to detail, so that those alike in part are solved in part once: the mesh of plates
// of one outline, post and washers, and the plate on its bed, whatever the strength of what holds it. Forces are the
// same with and without it. One thread at a time.
#include <memory>

namespace toehold::demand {

class Kept {
  public:
    Kept();
    ~Kept();
    Kept(Kept&&) noexcept;
    Kept& operator=(Kept&&) noexcept;
    Kept(const Kept&) = delete;
    Kept& operator=(const Kept&) = delete;

    /// Of plates on a deck, for the solver of that mount.
    struct Plates;
    [[nodiscard]] Plates& plates() { return *plates_; }

  private:
    std::unique_ptr<Plates> plates_;
};

}  // namespace toehold::demand
