#include "ui/help/help_pages.h"

#include "ui/base/language.h"

#include <QFile>
#include <QHash>
#include <QRegularExpression>

#include <algorithm>

namespace lobewright::ui {

namespace {

const auto folder = QStringLiteral(":/help/");
const auto contents = QStringLiteral("contents.md");

QString read(const QString& file) {
    QFile page(helpPath(file));
    return page.open(QIODevice::ReadOnly) ? QString::fromUtf8(page.readAll()) : QString();
}

QString titleOf(const QString& text) {
    return text.section(QLatin1Char('\n'), 0, 0).remove(QLatin1String("# ")).trimmed();
}

/// The contents are the list: their headings are the groups, their links the pages.
std::vector<HelpPage> listed() {
    const QString text = read(contents);
    std::vector<HelpPage> pages = {{contents, titleOf(text), {}, text}};
    static const QRegularExpression link(QStringLiteral("^- \\[(.+)\\]\\((.+\\.md)\\)$"));
    QString group;
    for (const QString& line : text.split(QLatin1Char('\n'))) {
        if (line.startsWith(QLatin1String("## ")))
            group = line.mid(3).trimmed();
        const auto match = link.match(line);
        if (!match.hasMatch())
            continue;
        const QString page = read(match.captured(2));
        pages.push_back({match.captured(2), titleOf(page), group, page});
    }
    return pages;
}

} // namespace

QString helpPath(const QString& file) {
    const QString own = folder + shownLanguage() + QLatin1Char('/') + file;
    return QFile::exists(own) ? own : folder + file;
}

const std::vector<HelpPage>& helpPages() {
    static const std::vector<HelpPage> pages = listed();
    return pages;
}

const HelpPage* helpPage(const QString& file) {
    const auto found = std::ranges::find(helpPages(), file, &HelpPage::file);
    return found == helpPages().end() ? nullptr : &*found;
}

std::vector<const HelpPage*> helpPagesWith(const QString& words) {
    const QStringList wanted = words.split(QLatin1Char(' '), Qt::SkipEmptyParts);
    std::vector<const HelpPage*> found;
    for (const HelpPage& page : helpPages()) {
        const bool all = std::ranges::all_of(wanted, [&](const QString& word) {
            return page.text.contains(word, Qt::CaseInsensitive);
        });
        if (all && page.file != contents)
            found.push_back(&page);
    }
    std::ranges::stable_partition(found, [&](const HelpPage* page) {
        return std::ranges::any_of(wanted, [&](const QString& word) {
            return page->title.contains(word, Qt::CaseInsensitive);
        });
    });
    return found;
}

QString firstStepsIn(const QString& arrangement) {
    const QString page = QStringLiteral("first-%1.md").arg(arrangement);
    return helpPage(page) ? page : QStringLiteral("first-designer.md");
}

QString helpOfView(const QString& key) {
    static const QHash<QString, QString> pages = {{"section", "drawings.md"},
                                                  {"tracks", "lobes.md"},
                                                  {"circle", "drawings.md"},
                                                  {"liner", "drawings.md"},
                                                  {"solid", "drawings.md"},
                                                  {"clock", "drawings.md"},
                                                  {"adjuster", "adjuster.md"},
                                                  {"walk", "first-student.md"},
                                                  {"stages", "first-student.md"},
                                                  {"lesson-plot", "plots.md"},
                                                  {"tasks", "arrangement-tasks.md"},
                                                  {"cranks", "arrangement-cranks.md"},
                                                  {"position", "lobes.md"},
                                                  {"ports", "ports.md"},
                                                  {"timing", "ports.md"},
                                                  {"torque", "torque.md"},
                                                  {"stress", "durability.md"},
                                                  {"gas", "gas.md"},
                                                  {"pressure-volume", "plots.md"},
                                                  {"forces", "torque.md"},
                                                  {"balance", "balance.md"},
                                                  {"chosen", "plots.md"},
                                                  {"torque-curve", "studies.md"},
                                                  {"phase-map", "studies.md"},
                                                  {"load-map", "schedules.md"},
                                                  {"supply", "supply.md"},
                                                  {"compressor", "supply.md"},
                                                  {"energy", "friction.md"},
                                                  {"contact-map", "durability.md"},
                                                  {"lever", "torque.md"},
                                                  {"free-body", "torque.md"},
                                                  {"bearings", "torque.md"},
                                                  {"orders", "balance.md"},
                                                  {"limits", "limits.md"},
                                                  {"figures", "limits.md"},
                                                  {"comparison", "crank.md"},
                                                  {"claims", "claims.md"},
                                                  {"ranges", "unknowns.md"},
                                                  {"bands", "unknowns.md"},
                                                  {"decides", "unknowns.md"},
                                                  {"width-angle", "contact.md"},
                                                  {"width-radius", "undercut.md"},
                                                  {"width-margin", "undercut.md"},
                                                  {"width-slip", "contact.md"},
                                                  {"width-pressure-slip", "contact.md"},
                                                  {"laws", "lobes.md"},
                                                  {"factors", "lobes.md"}};
    return pages.value(key);
}

QString helpOfDialog(const QString& name) {
    static const QHash<QString, QString> pages = {{"preferences", "preferences.md"},
                                                  {"shortcuts", "keys.md"},
                                                  {"export", "exports.md"},
                                                  {"frames", "exports.md"},
                                                  {"liftImport", "exports.md"},
                                                  {"wheelImport", "supply.md"},
                                                  {"knotFit", "lobes.md"},
                                                  {"problems", "files.md"},
                                                  {"about", "cautions.md"},
                                                  {"newEngine", "known.md"},
                                                  {"known", "known.md"},
                                                  {"goal", "known.md"},
                                                  {"schedule", "schedules.md"},
                                                  {"picture", "picture.md"}};
    return pages.value(name);
}

QString helpOfArrangement(const QString& key) {
    const QString file = QStringLiteral("arrangement-%1.md").arg(key);
    return helpPage(file) ? file : QString();
}

} // namespace lobewright::ui
