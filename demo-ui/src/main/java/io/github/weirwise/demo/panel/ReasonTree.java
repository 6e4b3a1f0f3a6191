package io.github.weirwise.demo.panel;

import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.report.Reason;
import java.awt.Component;
import javax.swing.JTree;
import javax.swing.tree.DefaultMutableTreeNode;
import javax.swing.tree.DefaultTreeCellRenderer;
import javax.swing.tree.DefaultTreeModel;
import javax.swing.tree.TreePath;

/** Reasons that unfold: the first line tells the gist, each line below supports the one over it. */
public final class ReasonTree extends JTree {
    private static final long serialVersionUID = 1L;
    private static final int INDENT_PX = 24;
    private static final int LEAST_TEXT_PX = 160;

    private int textWidth = 400;

    public ReasonTree() {
        super(new DefaultTreeModel(new DefaultMutableTreeNode("")));
        setName("reasons");
        setRootVisible(true);
        setShowsRootHandles(true);
        setOpaque(false);
        setToggleClickCount(1);
        setCellRenderer(new Wrapped());
    }

    public void show(Reason reason, Dress dress) {
        setModel(new DefaultTreeModel(node(reason, dress)));
        expandPath(new TreePath(getModel().getRoot()));
    }

    public void clear() {
        setModel(new DefaultTreeModel(new DefaultMutableTreeNode("")));
    }

    private static DefaultMutableTreeNode node(Reason reason, Dress dress) {
        DefaultMutableTreeNode node = new DefaultMutableTreeNode(dress.words().say(reason.line()));
        reason.because().forEach(child -> node.add(node(child, dress)));
        return node;
    }

    /** It wraps its lines, so it never needs more than the place's width. */
    @Override
    public boolean getScrollableTracksViewportWidth() {
        return true;
    }

    @Override
    public void setBounds(int x, int y, int width, int height) {
        super.setBounds(x, y, width, height);
        if (width > 0 && Math.abs(width - textWidth) > 4) {
            textWidth = width;
            // A model change is the plain way to make the tree measure its rows again.
            ((DefaultTreeModel) getModel())
                    .nodeStructureChanged((DefaultMutableTreeNode) getModel().getRoot());
            expandRow(0);
        }
    }

    /** Lines that wrap at the tree's width. */
    private final class Wrapped extends DefaultTreeCellRenderer {
        private static final long serialVersionUID = 1L;

        Wrapped() {
            setLeafIcon(null);
            setOpenIcon(null);
            setClosedIcon(null);
        }

        @Override
        public Component getTreeCellRendererComponent(
                JTree tree, Object value, boolean selected, boolean expanded, boolean leaf, int row, boolean focused) {
            super.getTreeCellRendererComponent(tree, value, selected, expanded, leaf, row, focused);
            int depth = ((DefaultMutableTreeNode) value).getLevel() + 1;
            int width = Math.max(LEAST_TEXT_PX, textWidth - INDENT_PX * depth - 32);
            String text = String.valueOf(value);
            setText(wrapped(text, width, getFontMetrics(getFont()).stringWidth(text)));
            return this;
        }

        /** The text as it is when it fits, else as a paragraph of a width. */
        private static String wrapped(String text, int width, int textWidth) {
            if (textWidth <= width) {
                return text;
            }
            String safe = text.replace("&", "&amp;").replace("<", "&lt;");
            return "<html><body style='width:" + width + "pt'>" + safe;
        }
    }
}
