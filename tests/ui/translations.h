#pragma once

#include <QString>

#include <map>
#include <utility>

namespace lobewright::ui::test {

struct Message {
    QString source, translation;
    bool finished = true;
};
using Messages = std::map<std::pair<QString, QString>, Message>; ///< by context and source

/// What a file of translations holds; empty when there is no such file.
Messages readTranslations(const QString& name);
/// The German file of the sources.
QString germanFile();

} // namespace lobewright::ui::test
