#pragma once

#include <QString>

#include <map>
#include <utility>

namespace lobewright::ui::test {

struct Translation {
    QString source, translation;
    bool finished = true;
};
using Messages = std::map<std::pair<QString, QString>, Translation>; ///< by context and source

/// What a file of translations holds; empty when there is no such file.
Messages readTranslations(const QString& name);
/// The German file of the sources.
QString germanFile();

} // namespace lobewright::ui::test
