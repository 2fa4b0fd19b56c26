// The words of the window and what they mean, found by a few letters.
#pragma once

#include <QDialog>

class QLineEdit;
class QListWidget;
class QTextBrowser;

namespace loam::desk {

class TermsDialog : public QDialog {
    Q_OBJECT

public:
    explicit TermsDialog(QWidget* parent = nullptr);

private:
    void filter(const QString& text);
    void show_chosen();

    QLineEdit* line_;
    QListWidget* list_;
    QTextBrowser* text_;
};

} // namespace loam::desk
