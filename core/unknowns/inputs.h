#pragma once

#include "core/design/fields.h"
#include "core/design/ranged_inputs.h"
#include "core/draft/followers.h"
#include "core/unknowns/statistics.h"

#include <span>
#include <string>
#include <vector>

/// A design of which not everything is known: its results as bands, what decides them, and what
/// would have to be true for published figures to hold.
namespace lobewright::unknowns {

/// An input of the design that is not certain.
struct Member {
    design::Field field; ///< with its value in the design
    Marginal marginal;
    std::vector<std::string> options; ///< of a choice

    design::FieldValue value(double share) const;
};

/// One unknown of a study: an input, or the inputs of a group, which move together.
struct Unknown {
    std::string name; ///< JSON pointer of the input, or the name of the group
    Message label;    ///< trade words
    std::string unit; ///< of the first input; empty for a pure number and for a choice
    std::vector<Member> members;

    /// Of its first input, which stands for all.
    const Marginal& marginal() const { return members.front().marginal; }
    /// Trade words for a word of a choice.
    TextId optionLabel(std::size_t option) const;
    /// Its value as the tables show it: a number, or a word.
    std::string text(double share) const;
};

/// The unknowns of a design in file order: its inputs with ranges or options.
std::vector<Unknown> unknownsOf(const design::Design& design);

/// Values of all inputs for one point of the study: the unknowns and what follows them, in the
/// order of inputPaths(). shares: one an unknown, 0 … 1.
design::FieldValues valuesAt(std::span<const Unknown> unknowns, const draft::Followers& followers,
                             std::span<const double> shares);
/// JSON pointers: the members of the unknowns, then what follows them without a range of its own.
std::vector<std::string> inputPaths(std::span<const Unknown> unknowns,
                                    const draft::Followers& followers);

/// A value of an unknown for a sentence, in its unit, to so many digits.
Amount inUnitOf(const Unknown& unknown, double value, int digits = 3);

std::vector<Marginal> marginalsOf(std::span<const Unknown> unknowns);

} // namespace lobewright::unknowns
