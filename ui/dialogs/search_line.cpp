#include "ui/dialogs/search_line.h"

#include "ui/base/background_work.h"
#include "ui/base/layouts.h"
#include "ui/base/message_line.h"

#include <QDialogButtonBox>
#include <QLabel>
#include <QProgressBar>
#include <QPushButton>

namespace lobewright::ui {

SearchLine::SearchLine(BackgroundWork& work, QWidget* parent)
    : QWidget(parent), work_(work), message_(new QLabel(this)) {
    auto* progress = new QProgressBar(this);
    progress->setTextVisible(false);
    progress->setMaximumHeight(6);
    progress->setRange(0, 100);
    progress->setAccessibleName(tr("Progress of the search"));
    message_->setObjectName(QStringLiteral("message"));
    message_->setWordWrap(true);
    message_->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    columnOf(this, {0, 0, 0, 0}, -1, {progress, message_});
    connect(&work_, &BackgroundWork::progressed, progress, [progress](double fraction) {
        progress->setValue(static_cast<int>(100.0 * fraction));
    });
    connect(&work_, &BackgroundWork::busyChanged, progress, [progress] { progress->setValue(0); });
}

void SearchLine::say(const QString& text) {
    setMessage(*message_, text, false);
}

QPushButton* SearchLine::addButton(QDialogButtonBox& buttons, std::function<void()> search) {
    auto* button = buttons.addButton(tr("&Search"), QDialogButtonBox::ActionRole);
    button->setObjectName(QStringLiteral("search"));
    button->setDefault(true);
    connect(button, &QPushButton::clicked, this, [this, search = std::move(search)] {
        if (!work_.isBusy()) {
            search();
            return;
        }
        work_.stop();
        say(tr("Stopped."));
    });
    connect(&work_, &BackgroundWork::busyChanged, button,
            [button](bool isBusy) { button->setText(isBusy ? tr("&Stop") : tr("&Search")); });
    return button;
}

} // namespace lobewright::ui
