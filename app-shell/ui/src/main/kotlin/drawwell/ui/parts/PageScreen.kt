package drawwell.ui.parts

import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.ColumnScope
import androidx.compose.foundation.layout.fillMaxSize
import androidx.compose.foundation.layout.padding
import androidx.compose.foundation.rememberScrollState
import androidx.compose.foundation.verticalScroll
import androidx.compose.runtime.Composable
import androidx.compose.ui.Modifier
import androidx.compose.ui.platform.testTag
import androidx.compose.ui.unit.dp
import drawwell.ui.look.Measures

/** A screen that is read from the top and scrolls. */
@Composable
internal fun PageScreen(
    pane: Pane,
    pinned: @Composable () -> Unit = {},
    content: @Composable ColumnScope.() -> Unit,
) {
    Column(Modifier.fillMaxSize()) {
        Column(
            Modifier.weight(1f).testTag("scroll").verticalScroll(rememberScrollState())
                .padding(horizontal = Measures.margin).padding(top = 12.dp, bottom = 16.dp),
            Arrangement.spacedBy(Measures.apart),
        ) {
            Heading(pane.frame)
            pane.frame.notices.forEach { NoticeView(it, pane.send) }
            content()
        }
        Trouble(pane)
        Foot(pane, pinned)
    }
}
