package turnheel.exchange.pdf;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;

import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentCatalog;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.common.PDMetadata;
import org.apache.pdfbox.pdmodel.graphics.color.PDOutputIntent;

import turnheel.exchange.document.Document;
import turnheel.exchange.imprint.Product;
import turnheel.exchange.markup.XmlText;

/**
 * What a file says about itself: title, subject, language, which standards it keeps, what its colours mean. It says no
 * time: when a file was made is no part of what it holds.
 */
final class FileNotes {

    private static final String REGISTRY = "http://www.color.org";

    private FileNotes() {
    }

    /**
     * Replaces what the renderer has noted.
     *
     * @param content all that the file shows, by which its identifier is found
     */
    static void put(Document document, String content, PDDocument file) throws IOException {
        PDDocumentInformation information = new PDDocumentInformation();
        information.setTitle(PrintedText.said(document.title()));
        information.setSubject(PrintedText.said(document.subject()));
        information.setCreator(Product.NAME);
        information.setProducer(Product.NAME);
        file.setDocumentInformation(information);
        PDDocumentCatalog catalog = file.getDocumentCatalog();
        catalog.setMetadata(new PDMetadata(file,
                new ByteArrayInputStream(packet(document).getBytes(StandardCharsets.UTF_8))));
        PDOutputIntent colours = new PDOutputIntent(file, new ByteArrayInputStream(ScreenColours.profile()));
        colours.setInfo(ScreenColours.NAME);
        colours.setOutputCondition(ScreenColours.NAME);
        colours.setOutputConditionIdentifier(ScreenColours.NAME);
        colours.setRegistryName(REGISTRY);
        catalog.addOutputIntent(colours);
        file.setDocumentId(identifier(document.subject() + content));
    }

    private static long identifier(String content) {
        try {
            return ByteBuffer.wrap(MessageDigest.getInstance("SHA-256")
                    .digest(content.getBytes(StandardCharsets.UTF_8))).getLong();
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }

    /** As ISO 16684-1 (XMP); the second half describes what the first says of ISO 14289-1, as ISO 19005-2 asks. */
    private static String packet(Document document) {
        return """
                <?xpacket begin="\uFEFF" id="W5M0MpCehiHzreSzNTczkc9d"?>
                <x:xmpmeta xmlns:x="adobe:ns:meta/">
                <rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#">
                <rdf:Description rdf:about="" xmlns:dc="http://purl.org/dc/elements/1.1/"
                 xmlns:pdf="http://ns.adobe.com/pdf/1.3/" xmlns:xmp="http://ns.adobe.com/xap/1.0/"
                 xmlns:pdfaid="http://www.aiim.org/pdfa/ns/id/" xmlns:pdfuaid="http://www.aiim.org/pdfua/ns/id/">
                <dc:format>application/pdf</dc:format>
                <dc:title><rdf:Alt><rdf:li xml:lang="x-default">%1$s</rdf:li></rdf:Alt></dc:title>
                <dc:description><rdf:Alt><rdf:li xml:lang="x-default">%2$s</rdf:li></rdf:Alt></dc:description>
                <dc:language><rdf:Bag><rdf:li>%3$s</rdf:li></rdf:Bag></dc:language>
                <pdf:Producer>%4$s</pdf:Producer>
                <xmp:CreatorTool>%4$s</xmp:CreatorTool>
                <pdfaid:part>2</pdfaid:part>
                <pdfaid:conformance>A</pdfaid:conformance>
                <pdfuaid:part>1</pdfuaid:part>
                </rdf:Description>
                <rdf:Description rdf:about="" xmlns:pdfaExtension="http://www.aiim.org/pdfa/ns/extension/"
                 xmlns:pdfaSchema="http://www.aiim.org/pdfa/ns/schema#"
                 xmlns:pdfaProperty="http://www.aiim.org/pdfa/ns/property#">
                <pdfaExtension:schemas><rdf:Bag><rdf:li rdf:parseType="Resource">
                <pdfaSchema:schema>PDF/UA identification</pdfaSchema:schema>
                <pdfaSchema:namespaceURI>http://www.aiim.org/pdfua/ns/id/</pdfaSchema:namespaceURI>
                <pdfaSchema:prefix>pdfuaid</pdfaSchema:prefix>
                <pdfaSchema:property><rdf:Seq><rdf:li rdf:parseType="Resource">
                <pdfaProperty:name>part</pdfaProperty:name>
                <pdfaProperty:valueType>Integer</pdfaProperty:valueType>
                <pdfaProperty:category>internal</pdfaProperty:category>
                <pdfaProperty:description>Part of ISO 14289 that the file keeps</pdfaProperty:description>
                </rdf:li></rdf:Seq></pdfaSchema:property>
                </rdf:li></rdf:Bag></pdfaExtension:schemas>
                </rdf:Description>
                </rdf:RDF>
                </x:xmpmeta>
                <?xpacket end="w"?>
                """.formatted(XmlText.escaped(PrintedText.said(document.title())),
                XmlText.escaped(PrintedText.said(document.subject())), Document.LANGUAGE, Product.NAME);
    }
}
