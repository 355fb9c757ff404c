#include "ui/window/file_conflict.h"

#include "core/design/fields.h"
#include "ui/base/controls.h"
#include "ui/base/core_text.h"
#include "ui/base/units.h"
#include "ui/panels/chapters.h"

#include <QDialogButtonBox>
#include <QFileInfo>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QTreeWidget>
#include <QVBoxLayout>

#include <algorithm>
#include <map>

namespace lobewright::ui {

namespace {

constexpr unsigned mostRows = 500; // nobody reads more; lupdate trips over std::size_t here

QString valueText(const design::Field& field) {
    if (const auto* text = std::get_if<std::string>(&field.value)) {
        const TextId label = design::choiceLabel(field, *text);
        return label.empty() ? QString::fromStdString(*text) : coreText(label);
    }
    if (const auto* flag = std::get_if<bool>(&field.value))
        return *flag ? FileConflict::tr("yes") : FileConflict::tr("no");
    if (const auto* whole = std::get_if<int>(&field.value))
        return QString::number(*whole);
    if (const auto* number = std::get_if<double>(&field.value)) {
        const Unit unit = unitFor(field.unit);
        const QString digits = localNumbers(QString::number(unit.shown(*number), 'g', 12));
        const bool isJoined = unit.text.isEmpty() || unit.text == QStringLiteral("°");
        return digits + (isJoined ? QString() : QStringLiteral(" ")) + unit.text;
    }
    return FileConflict::tr("not given");
}

QString nameOf(const design::Design& design, const design::Field& field) {
    const QString label = coreText(field.label);
    const QString chapter = chapters().at(chapterOf(field)).titleOf(design);
    const QString group = coreText(field.groupLabel);
    if (group.isEmpty() || group == chapter)
        return QStringLiteral("%1: %2").arg(chapter, label);
    return QStringLiteral("%1, %2: %3").arg(chapter, group, label);
}

} // namespace

std::vector<InputDifference> differences(const design::Design& mine, const design::Design& theirs) {
    const std::vector<design::Field> own = design::fields(mine), other = design::fields(theirs);
    std::map<std::string_view, const design::Field*> others;
    for (const design::Field& field : other)
        others.emplace(field.path, &field);
    std::vector<InputDifference> found;
    for (const design::Field& field : own) {
        const auto match = others.find(field.path);
        if (match == others.end()) {
            found.push_back({nameOf(mine, field), valueText(field), {}});
            continue;
        }
        if (match->second->value != field.value)
            found.push_back({nameOf(mine, field), valueText(field), valueText(*match->second)});
        others.erase(match);
    }
    for (const design::Field& field : other) {
        if (others.contains(field.path))
            found.push_back({nameOf(theirs, field), {}, valueText(field)});
    }
    if (mine.snapshots != theirs.snapshots) {
        found.push_back({FileConflict::tr("Snapshots"), QString::number(mine.snapshots.size()),
                         QString::number(theirs.snapshots.size())});
    }
    return found;
}

FileConflict::FileConflict(const QString& file, const design::Design& mine,
                           const Result<design::Design>& theirs, QWidget* parent)
    : QDialog(parent) {
    setObjectName(QStringLiteral("fileConflict"));
    setWindowTitle(tr("File changed by another program"));
    auto* column = new QVBoxLayout(this);
    auto* intro = new QLabel(this);
    intro->setTextFormat(Qt::PlainText);
    intro->setWordWrap(true);
    column->addWidget(intro);
    const QString name = QFileInfo(file).fileName();
    if (theirs) {
        const auto all = differences(mine, *theirs);
        intro->setText(tr("“%1” was changed by another window or program since it was opened or "
                          "saved here. %n input(s) differ:",
                          nullptr, static_cast<int>(all.size()))
                           .arg(name));
        column->addWidget(buildList(all));
    } else {
        intro->setText(tr("“%1” was changed by another window or program since it was opened or "
                          "saved here, and holds no usable design now: %2")
                           .arg(name, coreText(theirs.problems().front().message)));
    }
    buildButtons(static_cast<bool>(theirs));
    resize(720, theirs ? 420 : 160);
}

QTreeWidget* FileConflict::buildList(const std::vector<InputDifference>& all) {
    auto* list = new QTreeWidget(this);
    list->setObjectName(QStringLiteral("differences"));
    list->setAccessibleName(tr("Differences"));
    list->setHeaderLabels({tr("Input"), tr("In this window"), tr("In the file")});
    list->setRootIsDecorated(false);
    list->setUniformRowHeights(true);
    for (std::size_t i = 0; i < std::min<std::size_t>(all.size(), mostRows); ++i)
        new QTreeWidgetItem(list, {all[i].input, all[i].mine, all[i].theirs});
    if (all.size() > mostRows) {
        new QTreeWidgetItem(list,
                            {tr("and %n more", nullptr, static_cast<int>(all.size() - mostRows))});
    }
    list->header()->setSectionResizeMode(0, QHeaderView::ResizeToContents);
    return list;
}

void FileConflict::buildButtons(bool canReload) {
    auto* buttons = footOf(*this, QDialogButtonBox::Cancel);
    const auto add = [&](const QString& text, const QString& hint, Answer answer) {
        auto* button = buttons->addButton(text, QDialogButtonBox::ActionRole);
        button->setToolTip(hint);
        button->setAutoDefault(false);
        connect(button, &QPushButton::clicked, this, [this, answer] {
            answer_ = answer;
            accept();
        });
        return button;
    };
    add(tr("&Overwrite the file"),
        tr("The design of this window is saved; what the file holds now "
           "is lost"),
        Answer::overwrite);
    add(tr("Save &as…"), tr("Both stay: this window goes into another file"), Answer::saveAs);
    add(tr("&Reload the file"), tr("This window takes what the file holds; can be undone"),
        Answer::reload)
        ->setEnabled(canReload);
    buttons->button(QDialogButtonBox::Cancel)->setDefault(true);
    layout()->addWidget(buttons);
}

FileConflict::Answer FileConflict::ask() {
    exec();
    return answer_;
}

} // namespace lobewright::ui
