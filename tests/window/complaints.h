#pragma once
// What the toolkit and the libraries below it complained of while the tests ran; any of it fails the run.
#include <string>
#include <vector>

namespace toehold::test {

/// Once, before the toolkit begins: warnings of GLib and GTK are kept from then on.
void listen_for_complaints();
void complain(const std::string& words);
[[nodiscard]] std::vector<std::string> complaints();

}  // namespace toehold::test
