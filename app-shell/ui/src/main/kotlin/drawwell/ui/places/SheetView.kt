package drawwell.ui.places

import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.layout.heightIn
import androidx.compose.foundation.layout.padding
import androidx.compose.runtime.Composable
import androidx.compose.runtime.key
import androidx.compose.ui.Modifier
import androidx.compose.ui.semantics.contentDescription
import androidx.compose.ui.semantics.semantics
import androidx.compose.ui.semantics.testTag
import androidx.compose.ui.unit.dp
import drawwell.surface.SheetScreen
import drawwell.ui.forms.FieldSheet
import drawwell.ui.look.LocalLettering
import drawwell.ui.look.Measures
import drawwell.ui.parts.ActionButton
import drawwell.ui.parts.PageScreen
import drawwell.ui.parts.Pane
import drawwell.ui.parts.Words

/** The visit sheet before it goes out: its parts exactly as they go out. */
@Composable
internal fun SheetView(pane: Pane, sheet: SheetScreen) {
    val lettering = LocalLettering.current
    PageScreen(
        pane,
        pinned = { ActionButton(sheet.handOver, pane.send, Modifier.fillMaxWidth().heightIn(min = 64.dp)) },
    ) {
        Words(
            sheet.intro,
            lettering.body,
            Modifier.semantics {
                contentDescription = "${sheet.spoken} ${sheet.intro}"
                testTag = "sheet-intro"
            },
        )
        FieldSheet(pane, sheet.fields, Modifier.padding(top = Measures.apart))
        sheet.parts.forEach { key(it.key) { SheetPartView(it, pane.send) } }
        sheet.leftOut?.let { SheetSectionView(it) }
        SheetSectionView(sheet.sources)
        Words(sheet.foot, lettering.action, Modifier.padding(top = Measures.rest).semantics { testTag = "sheet-foot" })
    }
}
