#pragma once
// Ctrl-C, and a system's wish that the program end, as a question that long work asks now and then.

namespace toehold::cli {

/// While one lives, the first such signal is only noted; another one, more than a second later, ends the program.
class Interruption {
  public:
    Interruption();
    ~Interruption();
    Interruption(const Interruption&) = delete;
    Interruption& operator=(const Interruption&) = delete;
    Interruption(Interruption&&) = delete;
    Interruption& operator=(Interruption&&) = delete;

    [[nodiscard]] static bool asked_for();
};

}  // namespace toehold::cli
