#include "ui/help/help_window.h"

#include "ui/base/controls.h"
#include "ui/help/help_pages.h"

#include <QAction>
#include <QDesktopServices>
#include <QHeaderView>
#include <QLineEdit>
#include <QSplitter>
#include <QTextBrowser>
#include <QToolButton>
#include <QTreeWidget>
#include <QVBoxLayout>

namespace lobewright::ui {

namespace {

constexpr QSize firstSize(920, 680);
constexpr int listWidth = 260;

QUrl urlOf(const QString& file) {
    return QUrl(QStringLiteral("qrc") + helpPath(file));
}

} // namespace

HelpWindow::HelpWindow(QWidget* parent)
    : QWidget(parent, Qt::Window), back_(new QToolButton(this)), forward_(new QToolButton(this)),
      home_(new QToolButton(this)), search_(new QLineEdit(this)), list_(new QTreeWidget(this)),
      text_(new QTextBrowser(this)) {
    setObjectName(QStringLiteral("help"));
    setWindowTitle(tr("Help – Lobewright"));
    resize(firstSize);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(8, 8, 8, 8);
    buildBar();
    auto* split = new QSplitter(Qt::Horizontal, this);
    split->addWidget(list_);
    split->addWidget(text_);
    split->setStretchFactor(1, 1);
    split->setSizes({listWidth, firstSize.width() - listWidth});
    column->addWidget(split, 1);
    list_->setHeaderHidden(true);
    describe(*list_, tr("Help pages"),
             tr("Help pages; type above to show only those that contain the words"));
    text_->setAccessibleName(tr("Help page"));
    text_->setOpenLinks(false);
    text_->document()->setDocumentMargin(14.0);
    connect(text_, &QTextBrowser::anchorClicked, this, [this](const QUrl& link) {
        const QUrl url = text_->source().resolved(link);
        if (url.scheme() == QLatin1String("qrc"))
            showPage(url.fileName());
        else
            QDesktopServices::openUrl(url);
    });
    // The browser's own source() is still that of the page before.
    connect(text_, &QTextBrowser::sourceChanged, this,
            [this](const QUrl& url) { markPage(url.fileName()); });
    connect(list_, &QTreeWidget::currentItemChanged, this, [this](QTreeWidgetItem* item) {
        if (item && !item->data(0, Qt::UserRole).isNull())
            showPage(item->data(0, Qt::UserRole).toString());
    });
    connect(search_, &QLineEdit::textChanged, this, &HelpWindow::listPages);
    connect(search_, &QLineEdit::returnPressed, this, &HelpWindow::showFirstFound);
    listPages();
    showPage(helpPages().front().file);
}

void HelpWindow::buildBar() {
    auto* bar = new QHBoxLayout;
    static_cast<QVBoxLayout*>(layout())->addLayout(bar);
    const auto add = [&](QToolButton* button, const QString& text, const QString& help,
                         const QKeySequence& keys) {
        auto* action = new QAction(text, this);
        action->setShortcut(keys);
        action->setToolTip(help + QStringLiteral(" (") + keys.toString(QKeySequence::NativeText) +
                           ')');
        button->setDefaultAction(action);
        bar->addWidget(button);
        return action;
    };
    QAction* back =
        add(back_, tr("&Back"), tr("To the page before"), QKeySequence(Qt::ALT | Qt::Key_Left));
    QAction* forward = add(forward_, tr("&Forward"), tr("To the page after"),
                           QKeySequence(Qt::ALT | Qt::Key_Right));
    QAction* home =
        add(home_, tr("&Contents"), tr("To the contents"), QKeySequence(Qt::ALT | Qt::Key_Home));
    connect(back, &QAction::triggered, text_, &QTextBrowser::backward);
    connect(forward, &QAction::triggered, text_, &QTextBrowser::forward);
    connect(home, &QAction::triggered, this, [this] { showPage(helpPages().front().file); });
    back->setEnabled(false);
    forward->setEnabled(false);
    connect(text_, &QTextBrowser::backwardAvailable, back, &QAction::setEnabled);
    connect(text_, &QTextBrowser::forwardAvailable, forward, &QAction::setEnabled);
    makeSearch(*search_, tr("Search all pages"), tr("Pages that contain all these words (Ctrl+F)"));
    bar->addWidget(search_, 1);
    auto* find = new QAction(this);
    find->setShortcut(QKeySequence::Find);
    addAction(find);
    connect(find, &QAction::triggered, search_, [this] {
        search_->setFocus(Qt::ShortcutFocusReason);
        search_->selectAll();
    });
    auto* close = new QAction(this);
    close->setShortcut(QKeySequence(Qt::Key_Escape));
    addAction(close);
    connect(close, &QAction::triggered, this, &QWidget::close);
}

void HelpWindow::listPages() {
    const QSignalBlocker quiet(list_);
    list_->clear();
    QTreeWidgetItem* group = nullptr;
    const auto add = [&](const HelpPage& page, bool grouped) {
        if (grouped && (!group || group->text(0) != page.group)) {
            group = new QTreeWidgetItem(list_, {page.group});
            group->setFlags(Qt::ItemIsEnabled);
            group->setExpanded(true);
        }
        auto* item = grouped ? new QTreeWidgetItem(group, {page.title})
                             : new QTreeWidgetItem(list_, {page.title});
        item->setData(0, Qt::UserRole, page.file);
    };
    if (!search_->text().trimmed().isEmpty()) {
        for (const HelpPage* page : helpPagesWith(search_->text()))
            add(*page, false);
        if (list_->topLevelItemCount() == 0)
            (new QTreeWidgetItem(list_, {tr("No page contains all these words")}))->setFlags({});
    } else {
        for (const HelpPage& page : helpPages())
            add(page, !page.group.isEmpty());
    }
    markPage(page());
}

void HelpWindow::showPage(const QString& file) {
    if (file != page()) {
        text_->setSource(urlOf(helpPage(file) ? file : helpPages().front().file),
                         QTextDocument::MarkdownResource);
    }
}

void HelpWindow::showFirstFound() {
    if (const QTreeWidgetItem* first = list_->topLevelItem(0);
        first && !search_->text().trimmed().isEmpty() && first->flags() != Qt::NoItemFlags)
        showPage(first->data(0, Qt::UserRole).toString());
}

QString HelpWindow::page() const {
    return text_->source().fileName();
}

void HelpWindow::markPage(const QString& file) {
    const QSignalBlocker quiet(list_);
    for (QTreeWidgetItemIterator it(list_); *it; ++it) {
        if ((*it)->data(0, Qt::UserRole).toString() != file)
            continue;
        list_->setCurrentItem(*it);
        list_->scrollToItem(*it);
        return;
    }
    list_->setCurrentItem(nullptr); // the search has left it out
}

void HelpWindow::open(const QString& file) {
    search_->clear(); // of the time before: its list would not hold the page that is asked for
    showPage(file);
    comeToFront();
}

void HelpWindow::searchFor(const QString& words) {
    search_->setText(words);
    showFirstFound();
    comeToFront();
}

void HelpWindow::comeToFront() {
    show();
    raise();
    activateWindow();
}

} // namespace lobewright::ui
