#include "ui/dialogs/table_file.h"

#include "ui/base/core_text.h"
#include "ui/base/last_folder.h"
#include "ui/base/layouts.h"

#include <QDir>
#include <QFile>
#include <QFileDialog>
#include <QFileInfo>
#include <QLineEdit>
#include <QPushButton>

namespace lobewright::ui {

TableFile::TableFile(const QString& title, qint64 largest, QWidget* parent)
    : QWidget(parent), title_(title), largest_(largest), name_(new QLineEdit(this)) {
    // Says which table it is; nothing to type in, and it must not look so.
    name_->setReadOnly(true);
    name_->setAccessibleName(tr("File of the table"));
    name_->setFrame(false);
    name_->setFocusPolicy(Qt::NoFocus);
    name_->setPlaceholderText(tr("none opened yet"));
    QPalette flat = name_->palette();
    flat.setColor(QPalette::Base, flat.color(QPalette::Window));
    name_->setPalette(flat);
    auto* choose = new QPushButton(tr("&Open…"), this);
    setFocusProxy(choose);
    rowOf(this, {0, 0, 0, 0}, -1, {{name_, 1}, choose});
    connect(choose, &QPushButton::clicked, this, &TableFile::ask);
}

void TableFile::ask() {
    const QString file = QFileDialog::getOpenFileName(this, title_, lastFolder(),
                                                      tr("Tables (*.csv *.txt);;All files (*)"));
    if (!file.isEmpty())
        open(file);
}

bool TableFile::open(const QString& file) {
    QFile stream(file);
    if (!stream.open(QIODevice::ReadOnly) || stream.size() > largest_) {
        Q_EMIT refused(tr("%1 cannot be read as a table.").arg(QFileInfo(file).fileName()));
        return false;
    }
    const QByteArray table = stream.readAll();
    setName(QDir::toNativeSeparators(file));
    Q_EMIT opened(table);
    return true;
}

void TableFile::setName(const QString& name) {
    name_->setText(name);
}

QString TableFile::wordsOf(const Problem& problem) {
    const QString text = coreText(problem.message);
    return problem.path.empty()
               ? text
               : QStringLiteral("%1: %2").arg(QString::fromStdString(problem.path).mid(1), text);
}

} // namespace lobewright::ui
