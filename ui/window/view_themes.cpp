#include "ui/window/view_themes.h"

#include <QCoreApplication>
#include <QMenu>

namespace lobewright::ui {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(ViewThemes)
};

QStringList keys(const char* list) {
    return QString::fromLatin1(list).split(QLatin1Char(' '));
}

} // namespace

const std::vector<ViewTheme>& viewThemes() {
    static const std::vector<ViewTheme> all = {
        {Words::tr("&Engine"),
         keys("section circle solid clock adjuster walk stages lesson-plot tasks")},
        {Words::tr("&Tracks and motion"),
         keys("tracks position laws factors width-angle width-radius width-margin width-slip")},
        {Words::tr("&Gas and ports"),
         keys("ports timing liner gas pressure-volume supply compressor energy")},
        {Words::tr("&Loads and balance"),
         keys("torque stress forces contact-map width-pressure-slip lever free-body bearings "
              "balance orders")},
        {Words::tr("&Studies and claims"),
         keys("torque-curve phase-map load-map comparison claims ranges bands decides")},
        {Words::tr("L&ists and custom plots"), keys("limits figures chosen")}};
    return all;
}

void addViewMenus(QMenu& menu, const Views& views, const QString& checked,
                  const std::function<void(const QString&)>& choose) {
    for (const ViewTheme& theme : viewThemes()) {
        QMenu* part = menu.addMenu(theme.title);
        part->setObjectName(QStringLiteral("everyView"));
        for (const QString& key : theme.views) {
            const Views::View* view = views.find(key);
            if (!view)
                continue;
            QAction* action = part->addAction(view->title, &menu, [choose, key] { choose(key); });
            action->setData(key);
            action->setCheckable(!checked.isEmpty());
            action->setChecked(key == checked);
            if (key == checked)
                part->menuAction()->setText(theme.title + QStringLiteral(" ✓"));
        }
    }
}

} // namespace lobewright::ui
