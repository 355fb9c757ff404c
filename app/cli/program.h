#pragma once

#include <functional>
#include <string>
#include <string_view>
#include <vector>

namespace CLI {
class App;
class ParseError;
} // namespace CLI

/// What every program without a screen does around its work.
namespace lobewright::cli {

/// The name and version of a program and, a line each, the libraries it is made of; `more`: those
/// beyond the computation's.
std::string versionOf(std::string_view program, const std::vector<std::string>& more = {});

/// Says why a call is wrong, and gives its exit status.
int refuse(std::string_view why);

/// The exit status after help or version, which were asked for, or what is wrong with the call has
/// been said.
int endOf(const CLI::App& program, const CLI::ParseError& error);

/// The exit status of a work, also where it is refused; with the caution, a line on stderr, after
/// one that gave figures: done, or stopped halfway.
int statusOf(const std::function<int()>& work);

/// Runs the work of a program and gives its exit status: also where it throws, where the standard
/// streams are closed, and where what it says cannot be written.
int runGuarded(const std::function<int()>& work);

} // namespace lobewright::cli
