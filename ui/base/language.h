#pragma once

#include <QString>

class QCoreApplication;

/// The language of the program; the source strings are English.
namespace lobewright::ui {

/// "en", "de"; empty: as the system. Kept between runs.
QString keptLanguage();
void keepLanguage(const QString& language);

/// Loads the translations of that language, ours and Qt's own, and with a chosen language its
/// number format. Before any window is made. False: there is none, and English is shown.
bool installLanguage(QCoreApplication& application, const QString& language);

/// The language that is shown: that of the translation loaded, "en" without one.
QString shownLanguage();

} // namespace lobewright::ui
