#pragma once

#include "core/design/design.h"
#include "core/result.h"

#include <QString>

#include <vector>

/// The designs that come with the program; they travel inside it.
namespace lobewright::ui {

struct Sample {
    QString resource; ///< path inside the program
    QString title;
    QString notes; ///< what to look at
};

/// A title or notes in the language of the program.
QString sampleText(const QString& text);
/// By title; the one the program opens with comes first.
const std::vector<Sample>& samples();
Result<design::Design> loadSample(const Sample& sample);

} // namespace lobewright::ui
