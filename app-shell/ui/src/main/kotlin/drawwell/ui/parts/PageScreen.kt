package drawwell.ui.parts

import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.ColumnScope
import androidx.compose.foundation.layout.fillMaxSize
import androidx.compose.foundation.layout.PaddingValues
import androidx.compose.foundation.layout.padding
import androidx.compose.runtime.Composable
import androidx.compose.ui.Modifier
import androidx.compose.ui.unit.dp
import drawwell.ui.look.Measures

/** A screen that is read from the top and scrolls. */
@Composable
internal fun PageScreen(
    pane: Pane,
    beside: @Composable () -> Unit = {},
    pinned: @Composable () -> Unit = {},
    content: @Composable ColumnScope.() -> Unit,
) {
    Column(Modifier.fillMaxSize()) {
        Scrolling(Modifier.weight(1f), PaddingValues(Measures.margin, 12.dp, Measures.margin, 16.dp)) {
            Heading(pane.frame)
            pane.frame.notices.forEach { NoticeView(it, pane.send) }
            content()
            AddRow(pane.frame.terms, pane.send, Modifier.padding(top = Measures.rest))
        }
        Trouble(pane)
        Foot(pane, pinned, beside)
    }
}
