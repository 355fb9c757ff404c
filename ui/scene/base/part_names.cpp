#include "ui/scene/base/part_names.h"

#include <QMenu>
#include <QSettings>

namespace lobewright::ui {

namespace {
const QString settingsKey = QStringLiteral("scene/part_names");
}

PartNames::PartNames(QObject* parent)
    : QObject(parent), areShown_(QSettings().value(settingsKey, true).toBool()) {}

void PartNames::setShown(bool shown) {
    if (shown == areShown_)
        return;
    areShown_ = shown;
    QSettings().setValue(settingsKey, shown);
    Q_EMIT shownChanged();
}

void PartNames::addAction(QMenu& menu) {
    auto* action = menu.addAction(tr("&Names of the parts"));
    action->setCheckable(true);
    action->setChecked(areShown_);
    action->setToolTip(tr("What turns, what slides and what pushes, written beside the parts"));
    connect(action, &QAction::toggled, this, &PartNames::setShown);
}

} // namespace lobewright::ui
