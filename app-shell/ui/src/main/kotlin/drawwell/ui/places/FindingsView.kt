package drawwell.ui.places

import androidx.compose.foundation.layout.padding
import androidx.compose.runtime.Composable
import androidx.compose.runtime.key
import androidx.compose.ui.Modifier
import drawwell.surface.FindingsScreen
import drawwell.ui.look.LocalLettering
import drawwell.ui.look.Measures
import drawwell.ui.parts.NoticeView
import drawwell.ui.parts.PageScreen
import drawwell.ui.parts.Pane
import drawwell.ui.parts.Words
import drawwell.ui.pictures.DialPictureView

/** What was found out about one thing: a pump, a trace, a fit. */
@Composable
internal fun FindingsView(pane: Pane, findings: FindingsScreen) {
    PageScreen(pane) {
        FindingsHead(findings)
        findings.dial?.let { DialPictureView(it, Modifier.padding(top = Measures.apart)) }
        findings.lines.forEach { Words(it, LocalLettering.current.body) }
        findings.asks.forEach { NoticeView(it, pane.send) }
        FindingsActions(findings.actions, pane.send, Modifier.padding(top = Measures.apart))
        findings.sections.forEach { key(it.key) { FindingsSection(pane, it) } }
    }
}
