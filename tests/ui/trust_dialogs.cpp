#include "tests/ui/trust_dialogs.h"

#include <QAction>
#include <QApplication>
#include <QFile>
#include <QFileDialog>
#include <QFileInfo>
#include <QLineEdit>
#include <QMenu>
#include <QMenuBar>
#include <QMessageBox>
#include <QPushButton>
#include <QTest>

namespace lobewright::ui::test {

QByteArray contents(const QString& file) {
    QFile stream(file);
    return stream.open(QIODevice::ReadOnly) ? stream.readAll() : QByteArray();
}

void write(const QString& file, const QByteArray& bytes) {
    QFile stream(file);
    if (!stream.open(QIODevice::WriteOnly) || stream.write(bytes) != bytes.size())
        throw std::runtime_error("cannot write " + file.toStdString());
}

void trigger(MainWindow& window, const QString& text) {
    for (QMenu* menu : window.menuBar()->findChildren<QMenu*>()) {
        for (QAction* action : menu->actions()) {
            if (action->text() == text)
                return action->trigger();
        }
    }
    throw std::runtime_error("no action " + text.toStdString());
}

DialogSeries::DialogSeries(std::vector<std::function<void(QDialog&)>> acts)
    : acts_(std::move(acts)) {
    QObject::connect(&timer_, &QTimer::timeout, &timer_, [this] {
        auto* dialog = qobject_cast<QDialog*>(QApplication::activeModalWidget());
        if (!dialog || next_ >= acts_.size() || !dialog->isVisible())
            return;
        acts_[next_++](*dialog);
    });
    timer_.start(30);
}

bool DialogSeries::waitUntilOver() {
    return QTest::qWaitFor([this] { return next_ >= acts_.size(); }, 20000);
}

void typeFile(QDialog& dialog, const QString& file) {
    auto* files = qobject_cast<QFileDialog*>(&dialog);
    ASSERT_TRUE(files) << dialog.metaObject()->className();
    const bool isFolder = files->fileMode() == QFileDialog::Directory;
    files->setDirectory(isFolder ? file : QFileInfo(file).path());
    auto* name = files->findChild<QLineEdit*>("fileNameEdit");
    ASSERT_TRUE(name);
    name->setFocus();
    name->setText(isFolder ? file : QFileInfo(file).fileName());
    QTest::keyClick(name, Qt::Key_Return);
}

namespace {

QString answer(QDialog& dialog, bool agrees) {
    auto* box = qobject_cast<QMessageBox*>(&dialog);
    if (!box) {
        ADD_FAILURE() << "not asked, but " << dialog.metaObject()->className();
        dialog.reject();
        return {};
    }
    QString text = box->text();
    for (QAbstractButton* button : box->buttons()) {
        if ((box->buttonRole(button) == QMessageBox::AcceptRole) == agrees) {
            button->click();
            return text;
        }
    }
    box->reject();
    return text;
}

} // namespace

QString refuse(QDialog& dialog) {
    return answer(dialog, false);
}

QString agree(QDialog& dialog) {
    return answer(dialog, true);
}

} // namespace lobewright::ui::test
