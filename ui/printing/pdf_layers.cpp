// The layers of an OpenPdf.
#include <string>

#include "ui/printing/open_pdf.h"
#include "ui/words/line_kind_words.h"

namespace coutil {
namespace {

// A layer's name among a page's resources; no other kind of resource is called so.
QByteArray resourceOf(LineKind kind) {
    return "/Layer" + QByteArray::number(static_cast<int>(kind));
}

std::vector<std::string> keysOf(qpdf_data pdf, qpdf_oh dictionary) {
    std::vector<std::string> keys;
    qpdf_oh_begin_dict_key_iter(pdf, dictionary);
    while (qpdf_oh_dict_more_keys(pdf) == QPDF_TRUE) keys.emplace_back(qpdf_oh_dict_next_key(pdf));
    return keys;
}

}  // namespace

// Qt names fonts and patterns by their object, so that the same name is the same thing on every
// page of the file.
void OpenPdf::addResources(qpdf_oh from, qpdf_oh to) {
    for (const std::string& kind : keysOf(pdf_, from)) {
        const qpdf_oh found = qpdf_oh_get_key(pdf_, from, kind.c_str());
        if (qpdf_oh_is_dictionary(pdf_, found) == QPDF_FALSE) continue;
        if (qpdf_oh_has_key(pdf_, to, kind.c_str()) == QPDF_FALSE) {
            qpdf_oh_replace_key(pdf_, to, kind.c_str(), qpdf_oh_new_dictionary(pdf_));
        }
        const qpdf_oh joined = qpdf_oh_get_key(pdf_, to, kind.c_str());
        for (const std::string& name : keysOf(pdf_, found)) {
            qpdf_oh_replace_key(pdf_, joined, name.c_str(),
                                qpdf_oh_get_key(pdf_, found, name.c_str()));
        }
    }
}

qpdf_oh OpenPdf::layerOf(LineKind kind) {
    const auto known = layers_.find(kind);
    if (known != layers_.end()) return known->second;
    const qpdf_oh layer = qpdf_oh_parse(pdf_, "<< /Type /OCG >>");
    qpdf_oh_replace_key(pdf_, layer, "/Name", textOf(lineKindName(kind)));
    return layers_[kind] = qpdf_make_indirect_object(pdf_, layer);
}

void OpenPdf::joinPage(const std::vector<qpdf_oh>& leaves, const std::vector<PdfPart>& parts) {
    const qpdf_oh resources = qpdf_oh_new_dictionary(pdf_);
    const qpdf_oh properties = qpdf_oh_new_dictionary(pdf_);
    const qpdf_oh contents = qpdf_oh_new_array(pdf_);
    for (std::size_t i = 0; i < parts.size(); ++i) {
        addResources(qpdf_oh_get_key(pdf_, leaves[i], "/Resources"), resources);
        QByteArray before = "q\n";
        QByteArray after = "\nQ\n";
        if (parts[i].kind) {
            const QByteArray name = resourceOf(*parts[i].kind);
            qpdf_oh_replace_key(pdf_, properties, name.constData(), layerOf(*parts[i].kind));
            before = "/OC " + name + " BDC\nq\n";
            after += "EMC\n";
        }
        qpdf_oh_append_item(pdf_, contents, streamOf(before));
        qpdf_oh_append_item(pdf_, contents, qpdf_oh_get_key(pdf_, leaves[i], "/Contents"));
        qpdf_oh_append_item(pdf_, contents, streamOf(after));
    }
    qpdf_oh_replace_key(pdf_, resources, "/Properties", properties);
    qpdf_oh_replace_key(pdf_, leaves.front(), "/Resources", resources);
    qpdf_oh_replace_key(pdf_, leaves.front(), "/Contents", contents);
    for (std::size_t i = 1; i < leaves.size(); ++i) note(qpdf_remove_page(pdf_, leaves[i]));
}

// All layers shown, in the order of LineKind.
void OpenPdf::listLayers() {
    if (layers_.empty()) return;
    const qpdf_oh all = qpdf_oh_new_array(pdf_);
    const qpdf_oh order = qpdf_oh_new_array(pdf_);
    for (const auto& [kind, layer] : layers_) {
        qpdf_oh_append_item(pdf_, all, layer);
        qpdf_oh_append_item(pdf_, order, layer);
    }
    const qpdf_oh shown = qpdf_oh_parse(pdf_, "<< /BaseState /ON >>");
    qpdf_oh_replace_key(pdf_, shown, "/Order", order);
    const qpdf_oh list = qpdf_oh_new_dictionary(pdf_);
    qpdf_oh_replace_key(pdf_, list, "/OCGs", all);
    qpdf_oh_replace_key(pdf_, list, "/D", shown);
    qpdf_oh_replace_key(pdf_, qpdf_get_root(pdf_), "/OCProperties", list);
}

void OpenPdf::joinParts(const std::vector<PdfPage>& pages) {
    std::vector<qpdf_oh> leaves;
    for (std::size_t i = 0; i < this->pages(); ++i) leaves.push_back(qpdf_get_page_n(pdf_, i));
    std::size_t next = 0;
    for (const PdfPage& page : pages) {
        const auto first = leaves.begin() + static_cast<std::ptrdiff_t>(next);
        const auto count = static_cast<std::ptrdiff_t>(page.parts.size());
        if (page.parts.size() > 1 || page.parts.front().kind) {
            joinPage({first, first + count}, page.parts);
        }
        next += page.parts.size();
    }
    listLayers();
}

}  // namespace coutil
