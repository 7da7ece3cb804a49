#include "ui/words/sewing_words.h"

#include <QCoreApplication>
#include <QStringList>
#include <set>

#include "core/pattern/panel_key.h"
#include "ui/words/trade_words.h"

namespace coutil {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(Sewing)
};

QString seamWords(const std::string& seam) {
    const bool isCentre = seam.starts_with("centre");
    return isCentre ? edgeName(seam) : edgeName("seam " + seam);
}

// "2 to 3", of the panels that a seam joins.
QString joined(const SewingStep& step, const Pattern& pattern) {
    for (const Seam& seam : pattern.seams) {
        if (seam.name != step.seam) continue;
        const std::string& front = pattern.panels[seam.front.panel].name;
        const std::string& back = pattern.panels[seam.back.panel].name;
        if (front == back) break;
        return Words::tr("Lay panel %1 on panel %2, face to face.")
            .arg(QString::fromStdString(front), QString::fromStdString(back));
    }
    return Words::tr("Lay both halves face to face.");
}

// Seams and panels of channels, each once, as they lie in the pattern.
QString places(const SewingStep& step, const Pattern& pattern,
               const std::vector<Channel>& channels) {
    QStringList named;
    for (const std::size_t i : step.channels) {
        const Channel& channel = channels[i];
        QString name =
            channel.seam.empty()
                ? Words::tr("panel %1")
                      .arg(QString::fromStdString(panelKey(pattern.panels[channel.panel])))
                : seamWords(channel.seam);
        if (channel.side == PanelSide::left) name = Words::tr("%1 on the left").arg(name);
        if (channel.side == PanelSide::right) name = Words::tr("%1 on the right").arg(name);
        if (!named.contains(name)) named << name;
    }
    return named.join(QStringLiteral(", "));
}

QString widths(const SewingStep& step, const std::vector<Channel>& channels, LengthUnit unit) {
    std::set<double> all;
    for (const std::size_t i : step.channels) all.insert(channels[i].widthMm);
    QStringList named;
    for (const double mm : all) named << lengthText(mm, unit);
    return named.join(QStringLiteral(", "));
}

QString channelSentence(const SewingStep& step, const Pattern& pattern,
                        const std::vector<Channel>& channels, LengthUnit unit) {
    const QString where = places(step, pattern, channels);
    const QString wide = widths(step, channels, unit);
    switch (step.kind) {
        case SewingStepKind::foldChannels:
            return Words::tr(
                       "Press the wider allowance over the trimmed one and stitch it down: a "
                       "channel %1 wide inside. At %2.")
                .arg(wide, where);
        case SewingStepKind::sewTapes:
            return Words::tr(
                       "Sew the channel tapes on their lines, both edges, %1 wide inside, "
                       "neither tight nor loose. At %2.")
                .arg(wide, where);
        default:
            break;
    }
    if (step.channels.empty())
        return Words::tr("Turn the allowance of both back edges in along the sewing line.");
    return Words::tr(
               "Turn the allowance of both back edges in along the sewing line and stitch "
               "the two channels beside the eyelets, %1 wide inside.")
        .arg(wide);
}

QString otherSentence(const SewingStep& step, const SewingFigures& figures) {
    const auto length = [&](double mm) { return lengthText(mm, figures.unit); };
    switch (step.kind) {
        case SewingStepKind::cutOut:
            return Words::tr(
                "Cut every panel of every layer along its cutting line, grain along "
                "the grain of the cloth.");
        case SewingStepKind::markLines:
            return Words::tr(
                "Draw sewing lines, waist marks, notches and channels on the wrong "
                "side, and write the number on every panel.");
        case SewingStepKind::setBusk:
            return Words::tr(
                       "Set the busk of %1 into the front edges: the loops on the wearer's "
                       "right, the studs on the left, waist marks level.")
                .arg(length(figures.buskMm));
        case SewingStepKind::turnFront:
            return Words::tr("Turn the allowance of the front edges in along the sewing line.");
        case SewingStepKind::catchTape:
            return Words::tr(
                       "Lay the waist tape, %1 wide, along the waist inside and catch it at "
                       "every seam, so that it takes the strain.")
                .arg(length(figures.waistTapeMm));
        case SewingStepKind::setEyelets:
            return Words::tr(
                       "Set %n eyelet(s) of %1 on each side by the gauge, between the two "
                       "channels.",
                       nullptr, static_cast<int>(figures.eyeletsOnASide))
                .arg(length(figures.eyeletMm));
        case SewingStepKind::bindBottom:
        case SewingStepKind::bindTop:
            return Words::tr(
                       "Bind with strips cut %1 wide, %2 when finished; no stitch through "
                       "a bone.")
                .arg(length(figures.bindingCutMm), length(figures.bindingMm));
        case SewingStepKind::turnBottom:
        case SewingStepKind::turnTop:
            return Words::tr("Turn the allowance in along the sewing line and fell it down.");
        case SewingStepKind::putBones:
            return Words::tr(
                "Push every bone into its channel by the bone table. It ends clear of "
                "the edge; a bone that stands against the binding is too long. File "
                "and cap cut ends first.");
        case SewingStepKind::lace:
            return Words::tr(
                "Lace from the bottom and from the top to the waist, even on both "
                "sides, the ends pulled at the waist.");
        default:
            return {};
    }
}

}  // namespace

QString sewingTitle(const SewingStep& step) {
    switch (step.kind) {
        case SewingStepKind::cutOut:
            return Words::tr("Cut out");
        case SewingStepKind::markLines:
            return Words::tr("Mark");
        case SewingStepKind::setBusk:
            return Words::tr("Busk");
        case SewingStepKind::turnFront:
            return Words::tr("Front edges");
        case SewingStepKind::joinSeam:
            return Words::tr("Join %1").arg(seamWords(step.seam));
        case SewingStepKind::catchTape:
            return Words::tr("Waist tape");
        case SewingStepKind::foldChannels:
            return Words::tr("Channels in the allowances");
        case SewingStepKind::sewTapes:
            return Words::tr("Channels of tape");
        case SewingStepKind::turnBack:
            return Words::tr("Back edges");
        case SewingStepKind::setEyelets:
            return Words::tr("Eyelets");
        case SewingStepKind::bindBottom:
        case SewingStepKind::turnBottom:
            return Words::tr("Bottom line");
        case SewingStepKind::putBones:
            return Words::tr("Bones");
        case SewingStepKind::bindTop:
        case SewingStepKind::turnTop:
            return Words::tr("Top line");
        case SewingStepKind::lace:
            return Words::tr("Lace");
    }
    return {};
}

QString sewingSentence(const SewingStep& step, const Pattern& pattern,
                       const std::vector<Channel>& channels, const SewingFigures& figures) {
    switch (step.kind) {
        case SewingStepKind::joinSeam:
            return joined(step, pattern) + QLatin1Char(' ') +
                   Words::tr(
                       "Pin the waist marks first, then the notches, then the ends; sew, and "
                       "press the seam open.");
        case SewingStepKind::foldChannels:
        case SewingStepKind::sewTapes:
        case SewingStepKind::turnBack:
            return channelSentence(step, pattern, channels, figures.unit);
        default:
            return otherSentence(step, figures);
    }
}

}  // namespace coutil
